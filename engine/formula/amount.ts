import type { Expression } from './expression';
import { refuseScale, refuseType } from './type-fault';
import { type Amount, isAmount, label, type Typed } from './typed';
import { isScaleReading } from './value';

/** What arithmetic takes: a number or a quantity, not a condition, an option or a point on a scale. */
export function amountOf(value: Typed): Amount {
  refuseScaleReading(value.expression);
  return comparableAmount(value);
}

/** The same where a point on a scale is no riddle: in comparisons, min and max. */
export function comparableAmount(value: Typed): Amount {
  if (isAmount(value)) return value;
  return refuseType(value, 'A number or a quantity is wanted here.', mendAmount(value));
}

function mendAmount({ expression, type }: Typed): string {
  const about = label(expression);
  return type.kind === 'option'
    ? `Compare it, such as if ${about} = ${type.options[0]} then 1 else 0.`
    : `Give it answers, such as if ${about} then 1 else 0.`;
}

function refuseScaleReading(e: Expression): void {
  const negative = e.kind === 'negative';
  const literal = negative ? e.of : e;
  if (literal.kind !== 'literal' || !isScaleReading(literal)) return;
  refuseScale(e, literal.unit, negative ? -literal.number : literal.number);
}
