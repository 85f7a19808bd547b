import { type Unit, type UnitSet, unitNamed, units } from '../units/index';
import { digitsOf, numberOf } from './digits';
import type { Literal, Place } from './expression';
import { inPlace, refuse } from './fault';
import { functionNamed } from './functions';
import { nearestName } from './near';

const unitNames = units.map((unit) => unit.name).filter((name) => name !== '');

/** A word that could have been meant as a factor. */
const NAME = /^[\p{L}_][\p{L}\p{N}_]*$/u;

/** A number and what stands behind it, '' for no unit. */
export interface Amount extends Place {
  readonly typed: string;
  readonly spelled: string;
}

/** Reads a number and the unit behind it, and where smaller units follow, `4 ft 1 in`, all of them as one. */
export function readLiteral(amounts: readonly Amount[], set: UnitSet): Literal {
  const read = amounts.map((amount) => readAmount(amount, set));
  const first = read[0]!;
  const whole = read.reduce(joined);
  return {
    kind: 'literal',
    from: first.from,
    to: whole.to,
    digits: whole.digits,
    number: whole.number,
    unit: whole.unit.name,
  };
}

interface ReadAmount extends Place {
  readonly digits: string;
  readonly number: number;
  readonly unit: Unit;
}

function readAmount(amount: Amount, set: UnitSet): ReadAmount {
  const { from, to, typed, spelled } = amount;
  const digits = digitsOf(typed);
  const unit = unitNamed(spelled.replace(/\s+/g, ' '));
  if (unit === undefined) return refuseUnit({ from: to - spelled.length, to }, digits, spelled, set);
  const number = numberOf(digits);
  if (!Number.isFinite(number)) refuseNumber(amount, digits);
  return { from, to, digits, number, unit };
}

/** Feet and inches, pounds and ounces: the number is counted in the smaller unit. */
function joined(great: ReadAmount, small: ReadAmount): ReadAmount {
  const digits = `${great.digits} ${great.unit.name} ${small.digits}`;
  if (small.unit.name === '') {
    const smaller = smallerOf(great.unit);
    const mend = smaller
      ? `Write its unit, such as ${digits} ${smaller}, or a sign between them, such as +.`
      : 'Leave it out, or write a sign between them, such as +.';
    return refuse(small, `${small.digits} stands behind ${great.digits} ${great.unit.name} without a unit.`, '', mend);
  }
  const ratio = great.unit.factor / small.unit.factor;
  if (continues(small.unit, great.unit)) {
    const meant = `${small.digits} ${small.unit.name} ${great.digits} ${great.unit.name}`;
    const place = { from: great.from, to: small.to };
    const mend = `Write ${meant}, or a sign between them, such as +.`;
    return refuse(
      place,
      `${great.unit.name} stands before ${small.unit.name}.`,
      'The greater unit stands first.',
      mend,
      inPlace(place, meant),
    );
  }
  if (!continues(great.unit, small.unit) || ratio < 1.5) {
    return refuse(small, 'Two values stand side by side.', '', 'Write a sign between them, such as + or ×.');
  }
  const whole = Math.abs(ratio - Math.round(ratio)) < 1e-9 ? Math.round(ratio) : ratio;
  return { from: great.from, to: small.to, digits, number: great.number * whole + small.number, unit: small.unit };
}

/** Units that are read on together, the greater first. */
const FAMILIES: readonly (readonly string[])[] = [
  ['yd', 'ft', 'in'],
  ['lb', 'oz'],
  ['h', 'min', 's'],
  ['m', 'cm', 'mm'],
  ['kg', 'g'],
];

const continues = (great: Unit, small: Unit): boolean =>
  FAMILIES.some((family) => family.includes(great.name) && family.indexOf(small.name) > family.indexOf(great.name));

function smallerOf(unit: Unit): string | undefined {
  const family = FAMILIES.find((names) => names.includes(unit.name));
  return family?.[family.indexOf(unit.name) + 1];
}

function refuseNumber(place: Place, digits: string): never {
  return digits.includes('/')
    ? refuse(place, `${digits} divides by zero.`, '', 'Write another number below the stroke.')
    : refuse(place, `${digits} is too large to calculate with.`, '', 'Write a smaller number.');
}

const ALLOWED: Readonly<Record<UnitSet, string>> = {
  metric: 'Behind a number stands a unit, such as mm, g or m/s.',
  inch_pound: 'Behind a number stands a unit, such as in, oz or mph.',
};

function refuseUnit(place: Place, digits: string, spelled: string, set: UnitSet): never {
  const sizes = /^[x×]([0-9]+(?:\.[0-9]+)?)$/.exec(spelled);
  if (sizes) {
    const found = `${digits}${spelled} is a propeller’s diameter and pitch: two sizes.`;
    return refuse(place, found, '', `Write one size, such as ${digits} in, or ${digits} × ${sizes[1]} to multiply.`);
  }
  if (/^x$/i.test(spelled)) refuse(place, `${spelled} is not a unit.`, ALLOWED[set], 'Write × or * to multiply.');
  const near = functionNamed(spelled) ? undefined : nearestName(spelled, unitNames);
  const mends = [
    ...(near === undefined ? [] : [`Did you mean ${digits} ${near}?`]),
    ...(NAME.test(spelled) ? [`To multiply, write ${digits} × ${spelled}.`] : []),
  ];
  return refuse(
    place,
    `${spelled} is not a unit.`,
    ALLOWED[set],
    mends.join(' ') || 'Write another unit, or none.',
    near === undefined ? undefined : inPlace(place, near),
  );
}
