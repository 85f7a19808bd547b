import type { Expression } from './expression';
import { refuseScale, refuseType } from './type-fault';
import { type Amount, isAmount, type Typed } from './typed';
import { isScaleReading } from './value';

/** What arithmetic takes: a number or a quantity, not a condition, an option or a point on a scale. */
export function amountOf(value: Typed): Amount {
  refuseScaleReading(value.expression);
  return comparableAmount(value);
}

/** The same where a point on a scale is no riddle: in comparisons, min and max. */
export function comparableAmount(value: Typed): Amount {
  if (isAmount(value)) return value;
  return refuseType(
    value,
    'A number or a quantity is wanted here.',
    value.type.kind === 'truth'
      ? 'Write a condition with its answers: condition ? 1 : 0.'
      : 'Compare it: a = b ? 1 : 0.',
  );
}

function refuseScaleReading(e: Expression): void {
  if (!isScaleReading(e)) return;
  const literal = e.kind === 'negative' ? e.of : e;
  if (literal.kind !== 'literal') return;
  refuseScale(e, literal.unit, e.kind === 'negative' ? -literal.number : literal.number);
}
