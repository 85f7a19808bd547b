import { everydayUnit, sameDimension, unitNamed } from '../units/index';
import { amountOf, comparableAmount } from './amount';
import { arithmeticType, powerType } from './arithmetic-type';
import { callType } from './call-type';
import type { Call, Choice, Comparison, Expression, Name, OptionName } from './expression';
import { attempt, type Refused } from './fault';
import { refuseMismatch, refuseName, refuseType, refuseValue } from './type-fault';
import type { Context, Scope, Typed, Written } from './typed';
import { constantOf } from './value';
import { PLAIN, quantityOf, sameType, TRUTH, type ValueType } from './value-type';

export type CheckResult =
  | {
      readonly ok: true;
      readonly type: ValueType;
      /** Names that it reads, each once, in reading order. */
      readonly reads: readonly string[];
      /** The same expression, with the names of options told from other names: the one to compile. */
      readonly expression: Expression;
    }
  | Refused;

/**
 * Checks names and dimensions before anything runs. `names`: what could be named, to offer the nearest. `wanted`: the type
 * that the value must have; where that is an option, the names of its options may be written. `written`: the units of examples.
 */
export function checkFormula(
  e: Expression,
  scope: Scope,
  names: () => readonly string[] = () => [],
  wanted?: ValueType,
  written: Written = { set: 'metric' },
): CheckResult {
  return attempt(() => {
    const own = written.unit === undefined ? undefined : unitNamed(written.unit);
    const unitOf: Context['unitOf'] = (dimension) =>
      own && own.name !== '' && sameDimension(own.dimension, dimension)
        ? own.name
        : everydayUnit(dimension, written.set);
    const context: Context = { scope, names, reads: new Set(), unitOf };
    const value = check(e, context, wanted);
    if (wanted && !sameType(value.type, wanted)) refuseValue(value, wanted, context);
    return { type: value.type, reads: [...context.reads], expression: value.expression };
  });
}

function check(e: Expression, context: Context, wanted?: ValueType): Typed {
  switch (e.kind) {
    case 'literal':
      return { expression: e, type: quantityOf(unitNamed(e.unit)!.dimension) };
    case 'pi':
      return { expression: e, type: PLAIN };
    case 'option':
    case 'name':
      return checkName(e, context, wanted);
    case 'negative': {
      const of = check(e.of, context);
      // The minus of a number belongs to it: −5 °C is a point on the scale like 5 °C.
      const { type } = constantOf(e) === undefined ? amountOf(of) : of;
      return { expression: { ...e, of: of.expression }, type };
    }
    case 'arithmetic': {
      const left = check(e.left, context);
      const right = check(e.right, context);
      const expression = { ...e, left: left.expression, right: right.expression };
      const a = amountOf(left);
      const b = amountOf(right);
      return { expression, type: e.sign === '^' ? powerType(a, b) : arithmeticType(e.sign, a, b, context) };
    }
    case 'comparison':
      return checkComparison(e, context);
    case 'logic': {
      const left = condition(check(e.left, context));
      const right = condition(check(e.right, context));
      return { expression: { ...e, left, right }, type: TRUTH };
    }
    case 'not':
      return { expression: { ...e, of: condition(check(e.of, context)) }, type: TRUTH };
    case 'call':
      return checkCall(e, context);
    case 'choice':
      return checkChoice(e, context, wanted);
  }
}

function checkName(e: Name | OptionName, context: Context, wanted: ValueType | undefined): Typed {
  const { name, from, to } = e;
  if (wanted?.kind === 'option') {
    const index = wanted.options.indexOf(name);
    if (index >= 0) return { expression: { kind: 'option', name, index, from, to }, type: wanted };
  }
  const expression: Name = { kind: 'name', name, from, to };
  const type = context.scope(name);
  if (type === undefined) return refuseName(expression, context, wanted?.kind === 'option' ? wanted.options : []);
  context.reads.add(name);
  return { expression, type };
}

function condition(value: Typed): Expression {
  if (value.type.kind === 'truth') return value.expression;
  return refuseType(value, 'A condition is wanted here.', 'Write a comparison, such as a < b.');
}

function checkComparison(e: Comparison, context: Context): Typed {
  // An option's name means something only beside a value that is one of the list.
  const listOf = (side: Expression): ValueType | undefined => {
    const type = side.kind === 'name' ? context.scope(side.name) : undefined;
    return type?.kind === 'option' ? type : undefined;
  };
  const left = check(e.left, context, listOf(e.right));
  const right = check(e.right, context, listOf(e.left));
  const expression = { ...e, left: left.expression, right: right.expression };
  if (!sameType(left.type, right.type)) refuseMismatch(left, right, 'compared', context);
  if (e.sign !== '=' && e.sign !== '≠') comparableAmount(left);
  return { expression, type: TRUTH };
}

function checkCall(e: Call, context: Context): Typed {
  const values = e.arguments.map((argument) => check(argument, context));
  return {
    expression: { ...e, arguments: values.map((value) => value.expression) },
    type: callType(e, values, context),
  };
}

function checkChoice(e: Choice, context: Context, wanted: ValueType | undefined): Typed {
  const when = condition(check(e.condition, context));
  const yes = check(e.yes, context, wanted);
  const no = check(e.no, context, wanted);
  if (!sameType(yes.type, no.type)) refuseMismatch(yes, no, 'the two answers of one condition', context);
  return { expression: { ...e, condition: when, yes: yes.expression, no: no.expression }, type: yes.type };
}
