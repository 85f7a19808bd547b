import {
  type Dimension,
  describeDimension,
  everydayUnit,
  sameDimension,
  type Unit,
  type UnitSet,
  unitNamed,
  units,
} from '../../../engine/index';

export interface UnitGroup {
  /** The kind of quantity in words: "a length". */
  readonly words: string;
  readonly units: readonly Unit[];
}

let made: readonly UnitGroup[] | undefined;

/** Every unit that can be read, one group a kind of quantity, in the order of the unit table. */
export function unitGroups(): readonly UnitGroup[] {
  made ??= grouped(units.filter((unit) => unit.name !== ''));
  return made;
}

/** The unit in which a kind of quantity is mostly told; '' for none. */
export function firstUnit(group: UnitGroup | undefined, set: UnitSet): string {
  if (!group) return '';
  const everyday = everydayUnit(group.units[0]!.dimension, set);
  return group.units.some(({ name }) => name === everyday) ? everyday : group.units[0]!.name;
}

function grouped(all: readonly Unit[]): readonly UnitGroup[] {
  const groups: { words: string; units: Unit[] }[] = [];
  for (const unit of all) {
    const group = groups.find((each) => sameDimension(each.units[0]!.dimension, unit.dimension));
    if (group) group.units.push(unit);
    else groups.push({ words: wordsOf(unit.dimension), units: [unit] });
  }
  return groups;
}

const wordsOf = (dimension: Dimension): string =>
  sameDimension(dimension, unitNamed('°')!.dimension) ? 'an angle or a share' : describeDimension(dimension);
