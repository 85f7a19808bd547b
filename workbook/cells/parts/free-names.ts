import { nameFault } from '../../../engine/index';

/** What a title is called in formulas: "Elevator horn, 25 mm" → elevator_horn_25_mm. */
export function nameFromTitle(title: string): string {
  const plain = title.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  return plain
    .replace(/[^a-z0-9]+/g, '_')
    .replace(/^[^a-z]+|_+$/g, '')
    .slice(0, 40)
    .replace(/_+$/, '');
}

/** The wanted name, or the first of wanted_2, wanted_3 … that is free and may be a name. */
export function freeName(wanted: string, taken: ReadonlySet<string>): string {
  const isFree = (name: string): boolean => !taken.has(name) && nameFault(name) === undefined;
  const stem = wanted.replace(/_\d+$/, '');
  let name = wanted;
  for (let k = 2; !isFree(name); k++) name = `${stem}_${k}`;
  return name;
}

/** Whether a name is the one that came from this title by itself, so that it may follow when the title changes. */
export const isOwnName = (name: string, title: string): boolean =>
  name.replace(/_\d+$/, '') === nameFromTitle(title).replace(/_\d+$/, '');
