import { expect, test } from 'vitest';
import type { PartsCell } from '../../../../engine/sheet/document';
import { partsCsv } from '../../../../workbook/cells/parts/table-csv';

const cell: PartsCell = {
  id: 'c1',
  kind: 'parts',
  name: 'parts',
  title: 'Weight and balance',
  fuel: '',
  rows: [
    { name: 'engine', title: 'Engine, "4.1 cm³"', shape: 'point', fields: { weighed: '172 g', x: '-150 mm' } },
    { name: 'fin', title: 'Fin', shape: 'point', fields: { mass: '2.975 g', count: '4' } },
  ],
};
const values: Readonly<Record<string, number>> = {
  'parts.mass': 0.1839,
  'parts.x': -0.1,
  'parts.engine.mass': 0.172,
  'parts.engine.estimate': 0.17,
  'parts.engine.weighed': 172 * 0.001,
  'parts.engine.x': -0.15,
  'parts.engine.moment_share': -0.25,
  'parts.fin.mass': 0.0119,
};
const units: Readonly<Record<string, string>> = { mass: 'g', estimate: 'g', weighed: 'g', x: 'mm', y: 'mm', z: 'mm' };
const numbers = {
  name: (path: string) => ({ unit: units[path.split('.').at(-1)!] ?? '%' }),
  value: (path: string) => values[path] ?? Number.NaN,
};

test('the table is written with its units in the heading, and blanks where there is no number', () => {
  const lines = partsCsv(cell, numbers).split('\r\n');
  expect(lines).toEqual([
    'part,name,shape,how many,"mass of one, g","weighed, g","x, mm","y, mm","z, mm","mass that counts, g","estimate, g","share of the moment, %"',
    '"Engine, ""4.1 cm³""",engine,weight,1,,172,-150,,,172,170,-25',
    'Fin,fin,weight,4,2.975,,,,,11.9,,',
    '"all parts, fuel as set",parts,,,,,-100,,,183.9,,',
    '',
  ]);
});
