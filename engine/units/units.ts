import { forceUnits } from './table/force';
import { geometryUnits } from './table/geometry';
import { heatAndCurrentUnits } from './table/heat-and-current';
import { massUnits } from './table/mass';
import { alsoSaid } from './table/said';
import type { Unit } from './unit';

/** Every unit that can be typed. A new unit is one row of one table. */
export const units: readonly Unit[] = [...geometryUnits, ...massUnits, ...forceUnits, ...heatAndCurrentUnits];

/** One spelling for what keyboards write differently: `m^2` and `m²`, the two signs for micro, the two for ohm, the dots. */
function plainSpelling(name: string): string {
  return name
    .replace(/\^2/g, '²')
    .replace(/\^3/g, '³')
    .replace(/\^4/g, '⁴')
    .replace(/\u03bc/g, 'µ')
    .replace(/\u2126/g, 'Ω')
    .replace(/[\u22c5\u2022]/g, '·')
    .replace(/\u00ba/g, '°');
}

/** A product of units may be typed without its dot where that cannot be taken for another unit: `Nm` for `N·m`. */
function spellings(unit: Unit): string[] {
  const all = [unit.name, ...unit.aliases];
  const close = all.filter((name) => name.includes('·')).map((name) => name.replaceAll('·', ''));
  return [...all, ...close, ...alsoSaid(unit.name, unit.aliases)];
}

const byName = new Map<string, Unit>();
for (const unit of units) {
  for (const name of [unit.name, ...unit.aliases]) {
    if (byName.has(name)) throw new RangeError(`Two units are called ${name}`);
    byName.set(name, unit);
  }
}
for (const unit of units) {
  for (const name of spellings(unit)) if (!byName.has(name)) byName.set(name, unit);
}

/** Every spelling that is read, longest first, so that the first that fits is the longest unit. */
export const unitSpellings: readonly string[] = [...byName.keys()]
  .filter((name) => name !== '')
  .sort((a, b) => b.length - a.length);

export function unitNamed(name: string): Unit | undefined {
  return byName.get(name) ?? byName.get(plainSpelling(name));
}

function known(name: string): Unit {
  const unit = unitNamed(name);
  if (unit === undefined) throw new RangeError(`${name} is not a unit; a name from the unit table is allowed`);
  return unit;
}

/** SI value of a number read in a unit: (x + offset) · factor. */
export function toSI(value: number, unit: string): number {
  const { factor, offset } = known(unit);
  return (value + offset) * factor;
}

/** Number that stands before a unit for an SI value: the inverse of `toSI`. */
export function fromSI(value: number, unit: string): number {
  const { factor, offset } = known(unit);
  return value / factor - offset;
}

/** The same for a difference of two values, where the zero of a temperature scale drops out. */
export function differenceFromSI(value: number, unit: string): number {
  return value / known(unit).factor;
}

/** SI value of a difference read in a unit: the inverse of `differenceFromSI`. */
export function differenceToSI(value: number, unit: string): number {
  return value * known(unit).factor;
}
