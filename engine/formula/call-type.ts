import { ONE, powerDimension, sameDimension } from '../units/index';
import { amountOf, comparableAmount } from './amount';
import type { Call } from './expression';
import { inPlace, refuse } from './fault';
import { type FormulaFunction, functionNamed, functionNames } from './functions';
import { nearestName } from './near';
import { refuseMismatch, refuseType } from './type-fault';
import type { Amount, Context, Typed } from './typed';
import { describeType, PLAIN, quantityOf, type ValueType } from './value-type';

/** Type of a function's value. */
export function callType(e: Call, values: readonly Typed[], context: Context): ValueType {
  const f = functionNamed(e.name) ?? refuseFunction(e, context);
  refuseCount(e, f);
  if (f.typing === 'alike') {
    const amounts = values.map(comparableAmount);
    refuseUnlike(amounts, e.name, context);
    return amounts[0]!.type;
  }
  const amounts = values.map(amountOf);
  const first = amounts[0]!;
  switch (f.typing) {
    case 'plain':
      return plain(first, e.name);
    case 'same':
      return first.type;
    case 'root':
      return quantityOf(powerDimension(first.type.dimension, 0.5));
    case 'ratio':
      return PLAIN;
    case 'angle':
      refuseUnlike(amounts, e.name, context);
      return PLAIN;
  }
}

function plain(value: Amount, name: string): ValueType {
  if (sameDimension(value.type.dimension, ONE)) return PLAIN;
  return refuseType(
    value,
    `${name} takes a plain number or an angle.`,
    `Divide what is in it by ${describeType(value.type)}.`,
  );
}

function refuseUnlike(values: readonly Amount[], name: string, context: Context): void {
  const first = values[0]!;
  for (const value of values.slice(1)) {
    if (sameDimension(value.type.dimension, first.type.dimension)) continue;
    refuseMismatch(first, value, `arguments of one ${name}`, context);
  }
}

function refuseFunction(e: Call, context: Context): never {
  const place = { from: e.from, to: e.from + e.name.length };
  if (e.name === 'log') {
    return refuse(place, 'log can be read in two ways.', '', 'Write ln for the natural logarithm or lg for base ten.');
  }
  if (context.scope(e.name) !== undefined) {
    return refuse(place, `${e.name} is a value, not a function.`, '', `To multiply, write ${e.name} × ( … ).`);
  }
  const near = nearestName(e.name, functionNames);
  const mend = near === undefined ? `Write one of ${functionNames.join(', ')}.` : `Did you mean ${near}?`;
  const repair = near === undefined ? undefined : inPlace(place, near);
  return refuse(place, `There is no function ${e.name}.`, '', mend, repair);
}

function refuseCount(e: Call, f: FormulaFunction): void {
  const given = e.arguments.length;
  const [least, most] = f.arity;
  if (given >= least && given <= most) return;
  const wanted = most === Number.POSITIVE_INFINITY ? `${least} or more` : String(least);
  refuse(
    e,
    `${e.name} has ${given} ${given === 1 ? 'argument' : 'arguments'}.`,
    `It takes ${wanted}.`,
    given < least ? 'Write what is missing, with commas between.' : 'Leave out what is too much.',
  );
}
