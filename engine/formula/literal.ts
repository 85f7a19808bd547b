import { unitNamed, units } from '../units/index';
import type { Literal, Place } from './expression';
import { inPlace, refuse } from './fault';
import { functionNamed } from './functions';
import { nearestName } from './near';

const unitNames = units.map((unit) => unit.name).filter((name) => name !== '');

/** A word that could have been meant as a factor. */
const NAME = /^[\p{L}_][\p{L}\p{N}_]*$/u;

/** Reads a number and the unit behind it, '' for none. */
export function readLiteral(place: Place, typed: string, spelled: string): Literal {
  const digits = typed.replace('−', '-').replace(/\s+/g, ' ');
  const unit = unitNamed(spelled);
  if (unit === undefined) {
    const from = place.to - spelled.length;
    return refuseUnit({ from, to: place.to }, digits, spelled);
  }
  const number = numberOf(digits);
  if (!Number.isFinite(number)) refuseNumber(place, digits);
  return { kind: 'literal', ...place, digits, number, unit: unit.name };
}

/** What digits say: `18.3`, `1e-3`, `3/32`, `1 3/32`. */
function numberOf(digits: string): number {
  const fraction = /^(?:([0-9]+) )?([0-9]+)\/([0-9]+)$/.exec(digits);
  if (!fraction) return Number(digits);
  const [, wholes = '0', above, below] = fraction;
  return Number(wholes) + Number(above) / Number(below);
}

function refuseNumber(place: Place, digits: string): never {
  return digits.includes('/')
    ? refuse(place, `${digits} divides by zero.`, '', 'Write another number below the stroke.')
    : refuse(place, `${digits} is too large to calculate with.`, '', 'Write a smaller number.');
}

function refuseUnit(place: Place, digits: string, spelled: string): never {
  const near = functionNamed(spelled) ? undefined : nearestName(spelled, unitNames);
  const mends = [
    ...(near === undefined ? [] : [`Did you mean ${digits} ${near}?`]),
    ...(NAME.test(spelled) ? [`To multiply, write ${digits} × ${spelled}.`] : []),
  ];
  return refuse(
    place,
    `${spelled} is not a unit.`,
    'Behind a number stands a unit, such as mm, g or m/s.',
    mends.join(' ') || 'Write another unit, or none.',
    near === undefined ? undefined : inPlace(place, near),
  );
}
