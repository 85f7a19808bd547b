import type { Part, PartShape } from '../../engine/index';

/** What a person calls each shape, and the texts that only it has. */
const shapes: Readonly<Record<PartShape, { readonly word: string; readonly fields: readonly string[] }>> = {
  point: { word: 'weight', fields: ['mass'] },
  sheet: { word: 'sheet', fields: ['area', 'thickness', 'material'] },
  stack: { word: 'stack', fields: ['area', 'stack'] },
  rod: { word: 'rod', fields: ['length', 'diameter', 'material'] },
  solid: { word: 'block', fields: ['volume', 'material'] },
};

/** Texts that every part may have, in the order of the form. */
const shared: readonly string[] = [
  'x',
  'y',
  'z',
  'size_x',
  'size_y',
  'size_z',
  'coats_area',
  'coat',
  'mass_tolerance',
  'station_tolerance',
  'weighed',
];

const titles: Readonly<Record<string, string>> = {
  x: 'station, aft of the root leading edge',
  y: 'outboard of the centreline',
  z: 'above the reference line',
  size_x: 'size fore and aft',
  size_y: 'size across',
  size_z: 'height',
  coats_area: 'finished area',
  coat: 'finish, mass per area',
  mass_tolerance: 'tolerance of the mass',
  station_tolerance: 'tolerance of the station',
  weighed: 'weighed',
};

export const fieldsOfPart = (part: Part): readonly string[] => [...shapes[part.shape].fields, ...shared];

export const partFieldTitle = (field: string): string => titles[field] ?? field;

/** The shape with what it is made of: "sheet, balsa medium, 2.5 mm". */
export function shapeWords(part: Part): string {
  const { word, fields } = shapes[part.shape];
  const made = ['material', 'stack', 'thickness', 'diameter'].filter((field) => fields.includes(field));
  const said = made.map((field) => (part.fields[field] ?? '').replaceAll('_', ' ')).filter((text) => text !== '');
  return [part.fuel ? 'fuel' : word, ...said].join(', ');
}
