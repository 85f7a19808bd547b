import { ONE, overDimension, powerDimension, sameDimension, timesDimension } from '../units/index';
import { compileFormula } from './compile';
import { type ArithmeticSign, isFixed } from './expression';
import { refuse } from './fault';
import { refuseMismatch, refuseType } from './type-fault';
import { type Amount, type Context, says } from './typed';
import { quantityOf, type ValueType } from './value-type';

/** Type of a sum, difference, product or quotient. */
export function arithmeticType(
  sign: Exclude<ArithmeticSign, '^'>,
  left: Amount,
  right: Amount,
  context: Context,
): ValueType {
  const a = left.type.dimension;
  const b = right.type.dimension;
  if (sign === '×') return quantityOf(timesDimension(a, b));
  if (sign === '÷') return quantityOf(overDimension(a, b));
  if (sameDimension(a, b)) return left.type;
  return refuseMismatch(left, right, sign === '+' ? 'added' : 'subtracted', context);
}

/** Type of a power: the exponent is plain, and written out where the base has a dimension. */
export function powerType(base: Amount, exponent: Amount): ValueType {
  if (!sameDimension(exponent.type.dimension, ONE)) {
    return refuseType(exponent, 'An exponent is a plain number.', 'Divide it by a quantity of its kind.');
  }
  const { dimension } = base.type;
  if (sameDimension(dimension, ONE)) return base.type;
  if (!isFixed(exponent.expression)) {
    return refuse(
      exponent.expression,
      `${says(base)}, and its exponent is computed.`,
      'The exponent of a quantity is a number written out.',
      'Write a number, such as 2, or divide the base by a quantity of its kind.',
    );
  }
  const power = compileFormula(exponent.expression, () => 0)(new Float64Array(0), 0);
  if (!Number.isFinite(power)) {
    return refuse(exponent.expression, 'The exponent is not a number.', '', 'Write a number, such as 2.');
  }
  return quantityOf(powerDimension(dimension, power));
}
