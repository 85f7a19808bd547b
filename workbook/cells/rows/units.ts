import { describeDimension, sameDimension, type Unit, units } from '../../../engine/index';

export interface UnitGroup {
  /** The kind of quantity in words: "a length (m)". */
  readonly words: string;
  readonly units: readonly Unit[];
}

let made: readonly UnitGroup[] | undefined;

/** Every unit that can be read, one group a kind of quantity, in the order of the unit table. */
export function unitGroups(): readonly UnitGroup[] {
  made ??= grouped(units.filter((unit) => unit.name !== ''));
  return made;
}

function grouped(all: readonly Unit[]): readonly UnitGroup[] {
  const groups: { words: string; units: Unit[] }[] = [];
  for (const unit of all) {
    const group = groups.find((each) => sameDimension(each.units[0]!.dimension, unit.dimension));
    if (group) group.units.push(unit);
    else groups.push({ words: describeDimension(unit.dimension), units: [unit] });
  }
  return groups;
}
