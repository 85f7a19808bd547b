import { expect, test } from 'vitest';
import type { OwnRow, RowDescription } from '../../../engine/index';
import { rowList } from '../../../workbook/library/row-list';
import { titleTold } from '../../../workbook/library/told';

const row = (name: string, group: string): RowDescription =>
  ({ name, title: `Title of ${name}`, group, values: {} }) as unknown as RowDescription;
const own = (name: string): OwnRow => ({ name, title: `My ${name}`, table: 'materials' }) as unknown as OwnRow;

test('own rows stand before the library’s, and one of the same name takes its place', () => {
  expect(
    rowList([own('maple'), own('scrap')], [row('maple', 'wood'), row('spruce', 'wood'), row('glass', '')]),
  ).toEqual([
    { value: 'maple', title: 'My maple', group: 'own, of this design' },
    { value: 'scrap', title: 'My scrap', group: 'own, of this design' },
    { value: 'spruce', title: 'Title of spruce', group: 'library: wood' },
    { value: 'glass', title: 'Title of glass', group: 'library' },
  ]);
});

test('an own row that is left out doesn’t let the library’s of its name in', () => {
  const but = (name: string): boolean => name === 'maple';
  expect(rowList([own('maple')], [row('maple', 'wood'), row('spruce', 'wood')], { but })).toEqual([
    { value: 'spruce', title: 'Title of spruce', group: 'library: wood' },
  ]);
});

test('a row of the library is called as the list asks', () => {
  expect(rowList([], [row('clear', 'coat')], { words: ({ title }) => `${title}, 10 g/m²` })[0]!.title).toBe(
    'Title of clear, 10 g/m²',
  );
});

test('a design in inches calls wire by its fraction of an inch', () => {
  const wire = { title: 'Music wire, 1.60 mm (0.063 in)', inchTitle: 'Music wire, 1/16 in (0.063 in)' };
  expect(titleTold(wire, 'metric')).toBe('Music wire, 1.60 mm (0.063 in)');
  expect(titleTold(wire, 'inch_pound')).toBe('Music wire, 1/16 in (0.063 in)');
});
