import { expect, test, vi } from 'vitest';
import { type Document, type Part, type PartsCell, textAt } from '../../../engine/index';
import { movedTexts } from '../../../workbook/cells/drawing/move-part';
import { partWords, placedParts, setBy } from '../../../workbook/cells/drawing/placed-parts';
import type { Sheet } from '../../../workbook/store/sheet';
import type { Page } from '../drawing/page';
import { showOf, withPiece } from './show-piece';
import { onStoppedClock } from './stopped-clock';

let page: Page;
onStoppedClock((opened) => {
  page = opened;
});

const row = (name: string, fields: Part['fields'], also: Partial<Part> = {}): Part => ({
  ...{ name, title: name, shape: 'point' },
  ...also,
  fields: { mass: '10 g', ...fields },
});
const table: PartsCell = {
  ...{ kind: 'parts', id: 'p9', name: 'items', title: 'Items', fuel: '0 %' },
  rows: [
    row('box', { x: '100 mm', size_x: '40 mm', size_y: '20 mm' }),
    row('bare', { x: '-50 mm' }),
    row('tip', { x: 'box_place / 2', y: '10 mm', size_x: '5 mm' }),
    row('slid', { x: 'box_place' }),
    row('nothing', { mass: '0 g', x: '0 mm' }),
    {
      name: 'wire',
      title: 'wire',
      shape: 'rod',
      fields: { material: 'balsa_medium', x: '0 mm', length: '300 mm', diameter: '2 mm', size_x: '300 mm' },
    },
  ],
};
const slide = {
  ...{ kind: 'variables' as const, id: 'v9', name: 'slides', title: 'Slides' },
  rows: [
    {
      name: 'box_place',
      title: 'Box place',
      symbol: '',
      unit: 'mm',
      text: '20 mm',
      low: '0 mm',
      high: '60 mm',
      step: '',
    },
  ],
};
const document = (): Document => {
  const one = withPiece(table);
  const [first] = one.sheets;
  return { ...one, sheets: [{ ...first!, pieces: [...first!.pieces, slide] }] };
};
const open = (): Promise<Sheet> => showOf(page, document(), () => null);
const partOf = (sheet: Sheet, name: string) => placedParts(sheet).find(({ path }) => path === `items.${name}`)!;

test('parts are placed with the lengths that are typed, the others from their shape; what weighs nothing is not there', async () => {
  const sheet = await open();
  const placed = placedParts(sheet).filter(({ path }) => path.startsWith('items.'));
  expect(placed.map(({ title }) => title)).toEqual(['box', 'bare', 'tip', 'slid', 'wire']);
  expect(partOf(sheet, 'box')).toMatchObject({ at: { x: 0.1, y: 0, z: 0 }, size: { x: 0.04, y: 0.02, z: 0 } });
  expect(partOf(sheet, 'bare').size).toBeUndefined();
  expect(partOf(sheet, 'wire')).toMatchObject({ round: true, size: { x: 0.3, y: 0.002, z: 0.002 } });
});

test('a drag sets the part, or the slide that its length names, no further than that goes, in one step', async () => {
  const sheet = await open();
  const drag = (name: string, place: { x: number; y: number }) => movedTexts(sheet, partOf(sheet, name), place, 0.0001);
  expect([...drag('box', { x: 0.1234, y: -0.05 })]).toEqual([
    ['items.box.x', '123 mm'],
    ['items.box.y', '-50 mm'],
  ]);
  expect(setBy(sheet, 'items.slid.x')).toBe('box_place');
  expect([...drag('slid', { x: 0.5, y: 0 })]).toEqual([
    ['box_place', '60 mm'],
    ['items.slid.y', '0 mm'],
  ]);
  const before = sheet.document.value;
  sheet.dragTexts(drag('box', { x: 0.12, y: 0.01 }), 'place of box');
  sheet.dragTexts(drag('box', { x: 0.13, y: 0.02 }), 'place of box');
  sheet.rest();
  await vi.advanceTimersByTimeAsync(60);
  expect(textAt(sheet.document.value, 'items.box.x')).toBe('130 mm');
  expect(sheet.undoSays.value).toBe('place of box');
  sheet.undo();
  expect(sheet.document.value).toEqual(before);
});

test('a length that is a formula is not dragged and says why', async () => {
  const sheet = await open();
  const tip = partOf(sheet, 'tip');
  expect([...movedTexts(sheet, tip, { x: 0, y: 0.2 }, 0.0001).keys()]).toEqual(['items.tip.y']);
  expect(partWords(sheet, tip)).toContain('Its station is the formula “box_place / 2” and is not dragged.');
  expect(partWords(sheet, partOf(sheet, 'slid'))).toContain('Its station is set by “Box place”, which a drag moves.');
  expect(partWords(sheet, partOf(sheet, 'bare')).replaceAll('\u00a0', ' ')).toMatch(
    /^bare, 10\.?0? g: station −50 mm, 0 mm from the centreline, height 0 mm.*Its lengths are not typed: it is drawn as a disc by its share of the moment\.$/,
  );
});
