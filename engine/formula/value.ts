import { toSI, unitNamed } from '../units/index';
import type { Expression, Literal } from './expression';

/** SI value of a literal. `negative`: a minus stands in front, which belongs to the number: −5 °C is 268.15 K. */
function literalValue(literal: Literal, negative: boolean): number {
  return toSI(negative ? -literal.number : literal.number, literal.unit);
}

/** Is a point on a scale with a zero of its own, °C or °F. */
export function isScaleReading(literal: Literal): boolean {
  return unitNamed(literal.unit)!.offset !== 0;
}

/** SI value of a signed literal ("1 3/32 in", "−5 °C", "18.3"); undefined if anything is computed or named. */
export function constantOf(e: Expression): number | undefined {
  if (e.kind === 'literal') return literalValue(e, false);
  if (e.kind === 'negative' && e.of.kind === 'literal') return literalValue(e.of, true);
  return undefined;
}
