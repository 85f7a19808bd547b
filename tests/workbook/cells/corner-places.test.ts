import { expect, test } from 'vitest';
import { sideOutlines } from '../../../engine/blocks/body/fields';
import { panelOutlines } from '../../../engine/blocks/wing/fields';
import {
  cornerPlace,
  onView,
  placesOf,
  withAdded,
  withInserted,
  withMoved,
} from '../../../workbook/cells/drawing/large/corner-places';

const side = { name: 'side_outline', ...sideOutlines.side_outline };
const { spanFirst: _, ...panel } = panelOutlines.inboard_outline;
const inboard = { name: 'inboard_outline', ...panel };
const box = [
  ['0 mm', '0 mm'],
  ['100 mm', '0 mm'],
  ['100 mm', '50 mm'],
  ['0 mm', '50 mm'],
];

test('a press is a corner in its own view, the inboard panel counted from the centreline, none beyond it', () => {
  expect(cornerPlace(side, { x: 0.1, z: 0.02 })).toEqual([0.1, 0.02]);
  expect(cornerPlace(side, { x: 0.1, y: 0.02 })).toBeUndefined();
  expect(cornerPlace(inboard, { x: 0.1, y: -0.4 })).toEqual([0.1, 0.4]);
  expect(cornerPlace(inboard, { x: 0.1, y: 0.4 })).toEqual([0.1, 0]);
  expect(onView(inboard, [0.1, 0.4])).toEqual([0.1, -0.4]);
});

test('what is not moved stays as it was typed', () => {
  const typed = [['1/2 in', '0,5 cm'], ...box.slice(1)];
  const moved = withMoved(typed, 1, [0.12345, 0.01], side, 'metric');
  expect(moved.slice(0, 2)).toEqual([
    ['1/2 in', '0,5 cm'],
    ['123.5 mm', '10 mm'],
  ]);
  expect(withAdded(typed, [0, 0.01], side, 'inch_pound').at(-1)).toEqual(['0 in', '0.394 in']);
});

test('a corner is put on the side that is nearest, the last side of a panel being none', () => {
  expect(withInserted(box, [0.05, 0.004], side, 'metric').at).toBe(1);
  expect(withInserted(box, [0.001, 0.03], side, 'metric')).toMatchObject({ at: 4, texts: { length: 5 } });
  expect(withInserted(box, [0.001, 0.03], inboard, 'metric').at).not.toBe(4);
  expect(withInserted([['0 mm', '0 mm']], [0.1, 0.1], side, 'metric').at).toBe(1);
});

test('texts that can’t be read have no places', () => {
  expect(placesOf(box, side, 'metric')).toEqual([
    [0, 0],
    [0.1, 0],
    [0.1, 0.05],
    [0, 0.05],
  ]);
  expect(placesOf([['3 g', '0']], side, 'metric')).toEqual([]);
});
