import { type Dimension, differenceToSI, sameDimension, unitNamed, withUnit } from '../units/index';
import { type Expression, type Name, type Place, partsOf } from './expression';
import { inPlace, type Repair, refuse } from './fault';
import { functionNamed } from './functions';
import { nearestFitting, nearestName } from './near';
import { printFormula } from './print';
import { type Context, label, says, type Typed } from './typed';
import { constantOf } from './value';
import { describeType, isPlain, listed, sameType, type ValueType } from './value-type';

/** Refuses two values that would have to be of one type. `cannot`: "added". */
export function refuseMismatch(left: Typed, right: Typed, cannot: string, context: Context): never {
  // The blame is on the second, unless it is plain that the first lacks its unit.
  const [wrong, other] = missingUnit(left, right.type, context) === undefined ? [right, left] : [left, right];
  const found = `${says(wrong)}, ${says(other)}: they cannot be ${cannot}.`;
  const { mend, repair } = mendMismatch(wrong, other, context);
  return refuse(wrong.expression, found, '', mend, repair);
}

interface Mend {
  readonly mend: string;
  readonly repair?: Repair;
}

/** Asks whether another name was meant, and offers to write it. */
const offer = (place: Place, better: string): Mend => ({
  mend: `Did you mean ${better}?`,
  repair: inPlace(place, better),
});

function mendMismatch(wrong: Typed, other: Typed, context: Context): Mend {
  const unit = missingUnit(wrong, other.type, context);
  if (unit !== undefined) return { mend: unit };
  for (const [one, against] of [
    [wrong, other],
    [other, wrong],
  ] as const) {
    const better = betterName(one, against, context);
    if (better !== undefined) return offer(one.expression, better);
  }
  return {
    mend:
      wrong.type.kind === 'quantity' && other.type.kind === 'quantity'
        ? `Make both ${describeType(other.type)}, or both ${describeType(wrong.type)}.`
        : 'Write two of one kind.',
  };
}

/** A bare number beside a quantity lacks its unit. */
function missingUnit({ expression, type }: Typed, wanted: ValueType, context: Context): string | undefined {
  if (!isPlain(type) || wanted.kind !== 'quantity' || isPlain(wanted)) return undefined;
  if (constantOf(expression) === undefined) return undefined;
  return `Write the unit behind the number, such as ${printFormula(expression)} ${context.unitOf(wanted.dimension)}.`;
}

function betterName(wrong: Typed, other: Typed, context: Context): string | undefined {
  if (wrong.expression.kind !== 'name') return undefined;
  const taken = namesIn(other.expression);
  const free = fitting(other.type, context).filter((name) => !taken.has(name));
  return nearestFitting(wrong.expression.name, free);
}

function fitting(type: ValueType, { names, scope }: Context): string[] {
  return names().filter((name) => {
    const known = scope(name);
    return known !== undefined && sameType(known, type);
  });
}

function namesIn(e: Expression): Set<string> {
  return new Set(e.kind === 'name' ? [e.name] : partsOf(e).flatMap((part) => [...namesIn(part)]));
}

/** Refuses a value where another type is wanted. */
export function refuseType(value: Typed, allowed: string, mend: string): never {
  return refuse(value.expression, `${says(value)}.`, allowed, mend);
}

/** Refuses the value of a whole formula where another type is wanted. */
export function refuseValue(value: Typed, wanted: ValueType, context: Context): never {
  const found = `${says(value)}; here ${describeType(wanted)} is wanted.`;
  const { mend, repair } = mendValue(value, wanted, context);
  return refuse(value.expression, found, '', mend, repair);
}

function mendValue(value: Typed, wanted: ValueType, context: Context): Mend {
  if (value.expression.kind === 'name' && wanted.kind === 'quantity') {
    const better = nearestFitting(value.expression.name, fitting(wanted, context));
    if (better !== undefined) return offer(value.expression, better);
  }
  const unit = wanted.kind === 'quantity' ? meantUnit(value, wanted) : undefined;
  if (unit !== undefined && value.expression.kind === 'literal') {
    return offer(value.expression, printFormula({ ...value.expression, unit }));
  }
  return { mend: adviceFor(value, wanted, context) };
}

/** A pull is often written as the mass that weighs as much, 10 lb, and a weight as a force. */
const WEIGHED: readonly (readonly [mass: string, force: string])[] = [
  ['g', 'gf'],
  ['kg', 'kgf'],
  ['oz', 'ozf'],
  ['lb', 'lbf'],
  ['oz·in', 'ozf·in'],
];

/** The unit that a literal lacks an f in, or has one too much in. */
function meantUnit({ expression }: Typed, wanted: { readonly dimension: Dimension }): string | undefined {
  if (expression.kind !== 'literal' || expression.digits.includes(' ')) return undefined;
  const pair = WEIGHED.find((units) => units.includes(expression.unit));
  const other = pair?.find((unit) => unit !== expression.unit);
  return other !== undefined && sameDimension(unitNamed(other)!.dimension, wanted.dimension) ? other : undefined;
}

const EXAMPLE = 10;

function adviceFor(value: Typed, wanted: ValueType, context: Context): string {
  if (wanted.kind === 'option') return `Write one of ${listed(wanted.options)}.`;
  if (wanted.kind === 'truth') return 'Write a comparison, such as a < b.';
  const unit = missingUnit(value, wanted, context);
  if (unit !== undefined) return unit;
  if (isPlain(value.type)) return `Write its numbers with their units, such as 2 ${context.unitOf(wanted.dimension)}.`;
  if (constantOf(value.expression) !== undefined) {
    return `Write ${describeType(wanted)}, such as ${isPlain(wanted) ? EXAMPLE : withUnit(String(EXAMPLE), context.unitOf(wanted.dimension))}.`;
  }
  return isPlain(wanted) && value.type.kind === 'quantity'
    ? `Divide it by ${describeType(value.type)}.`
    : `Change it so that it gives ${describeType(wanted)}.`;
}

/** Refuses a name that nothing has. `options`: what else could have been named in this place. */
export function refuseName(e: Name, context: Context, options: readonly string[]): never {
  const { name } = e;
  const all = context.names();
  const dot = name.lastIndexOf('.');
  const owner = name.slice(0, Math.max(dot, 0));
  const family = owner === '' ? [] : all.filter((known) => known.startsWith(`${owner}.`));
  if (family.length > 0) return refuseLastPart(e, owner, name.slice(dot + 1), family);
  const near = nearestName(name, options.length === 0 ? all : [...options, ...all]);
  const found = `Nothing is called ${name}.`;
  if (near !== undefined) {
    const { mend, repair } = offer(e, near);
    return refuse(e, found, '', mend, repair);
  }
  if (options.length > 0) return refuse(e, found, '', `Write one of ${listed(options)}.`);
  const inside = all.find((known) => known.startsWith(`${name}.`));
  if (inside !== undefined) {
    return refuse(e, `${name} has no value of its own.`, '', `Write which of its values is meant, such as ${inside}.`);
  }
  if (functionNamed(name)) return refuse(e, `${name} is a function.`, '', `Write ${name}( ) with a value in it.`);
  if (unitNamed(name)) {
    return refuse(e, `${name} is a unit without a number.`, '', `Write a number in front of it, such as 1 ${name}.`);
  }
  return refuse(e, found, '', 'Write the name of a variable, a formula line or a result.');
}

function refuseLastPart(e: Name, owner: string, last: string, family: readonly string[]): never {
  const lasts = family.map((known) => known.slice(owner.length + 1));
  const near = nearestName(last, lasts);
  const found = `${owner} has nothing called ${last}.`;
  if (near === undefined) return refuse(e, found, `It has ${listed(lasts)}.`, 'Write one of these behind the dot.');
  const { mend, repair } = offer(e, `${owner}.${near}`);
  return refuse(e, found, '', mend, repair);
}

/** Refuses °C or °F inside arithmetic, where nobody can tell a temperature from a difference of two. */
export function refuseScale(e: Expression, unit: string, number: number): never {
  const tidy = (x: number): string => String(Number(x.toPrecision(6))).replace('-', '−');
  return refuse(
    e,
    `${label(e)} is a point on a scale and cannot be calculated with.`,
    '',
    `Write ${tidy(differenceToSI(number, unit))} K for a difference, or ${tidy(constantOf(e)!)} K for the temperature itself.`,
  );
}
