import { PART_SHAPES, type PartField, partFields, type UnitSet } from '../../../../engine/index';
import { matchHeading, type PasteColumn, type Target } from '../../shared/paste-columns';

const fields: readonly PartField[] = [
  ...new Map(PART_SHAPES.flatMap(partFields).map((field) => [field.name, field])).values(),
];
const mass = fields.find(({ name }) => name === 'mass')!;

export const TARGETS: readonly Target[] = [
  { key: 'title', title: 'Part', unit: '' },
  { key: 'count', title: 'How many', dimension: fields.find(({ name }) => name === 'count')!.dimension, unit: '' },
  { key: 'mass', title: 'Mass of one', dimension: mass.dimension, unit: 'g' },
  { key: 'mass_all', title: 'Mass of all together', dimension: mass.dimension, unit: 'g' },
  { key: 'shape', title: 'Shape', unit: '' },
  { key: 'name', title: 'Name in formulas', unit: '' },
  { key: 'fuel', title: 'Fuel', unit: '' },
  { key: 'weighed_as', title: 'Weighed as made of', unit: '' },
  ...fields
    .filter(({ name }) => name !== 'mass' && name !== 'count')
    .map(({ name, title, dimension, unit }) => ({ key: name, title, dimension, unit })),
];

export const targetOf = (key: string): Target | undefined => TARGETS.find((each) => each.key === key);

/** Other words for them, in small letters. Common practice, no source. */
const ALSO: Readonly<Record<string, readonly string[]>> = {
  title: ['title', 'item', 'component', 'description', 'what'],
  count: ['quantity', 'qty', 'number', 'pieces', 'pcs', 'count'],
  mass: ['mass', 'weight', 'mass each', 'weight each', 'each'],
  mass_all: ['total', 'total mass', 'total weight', 'mass of all'],
  weighed: ['scale', 'on the scale', 'weighed mass'],
  x: ['x', 'arm', 'x station'],
  y: ['y'],
  z: ['z'],
};

const KNOWN: ReadonlyMap<string, string> = new Map(
  TARGETS.flatMap(({ key, title }) =>
    [title.toLowerCase(), key.replaceAll('_', ' '), ...(ALSO[key] ?? [])].map((said) => [said, key] as const),
  ).toReversed(),
);

/** Each column as its heading says. */
export const proposedColumns = (heading: readonly string[], set: UnitSet): readonly PasteColumn[] =>
  matchHeading(heading, (words) => targetOf(KNOWN.get(words) ?? ''), set);

/** What keeps these columns from being read. */
export function columnFaults(columns: readonly PasteColumn[]): readonly string[] {
  const faults: string[] = [];
  for (const { key, title } of TARGETS) {
    const heads = columns.filter(({ to }) => to === key).map(({ head }) => `“${head}”`);
    if (heads.length > 1) faults.push(`${heads.join(' and ')} are both matched to ${title}. Leave one of them out.`);
  }
  const has = (key: string): boolean => columns.some(({ to }) => to === key);
  if (!has('title')) faults.push('No column is matched to Part. Match the one that says what each part is.');
  if (!has('x')) faults.push('No column is matched to Station. Match the one that says where each part is.');
  if (has('mass') && has('mass_all')) {
    faults.push('Mass of one and Mass of all together are both matched. Leave one of them out.');
  }
  return faults;
}
