import { expect, test } from 'vitest';
import type { ChoiceCell } from '../../../../engine/index';
import { movedLayer, remade, withLayer, withoutLayer } from '../../../../workbook/cells/layers/edits';

const layer = (name: string, material: string, text: string) => ({ name, material, text });
const core = layer('core', 'balsa_light', '3.2 mm');
const glue = layer('glue', '', '50 g/m²');
const cell: ChoiceCell = {
  kind: 'choice',
  id: 'c1',
  name: 'stock',
  title: 'Stock',
  of: 'stack',
  columns: [],
  options: [
    { name: 'faced', title: 'faced', pattern: 'faced', layers: [core, glue] },
    { name: 'plain', title: 'plain', pattern: 'grain', layers: [core] },
  ],
  text: 'faced',
};
const names = (changed: ChoiceCell, at = 0): string[] => (changed.options[at]!.layers ?? []).map(({ name }) => name);

test('a layer is put on the last face of its own option', () => {
  const more = withLayer(cell, 'faced', layer('face', 'birch_ply', '0.4 mm'));
  expect(names(more)).toEqual(['core', 'glue', 'face']);
  expect(names(more, 1)).toEqual(['core']);
  expect(withoutLayer(more, 'faced', 'face')).toEqual(cell);
});

test('a layer moves as far as the faces, and back', () => {
  const moved = movedLayer(cell, 'faced', 'glue', -1);
  expect(names(moved)).toEqual(['glue', 'core']);
  expect(movedLayer(moved, 'faced', 'glue', -5)).toEqual(moved);
  expect(movedLayer(moved, 'faced', 'glue', 1)).toEqual(cell);
});

test('another material keeps the thickness; from sheet to glue line and back the number begins anew', () => {
  expect(remade('stock.faced.core', core, 'spruce', 'metric')).toEqual([['stock.faced.core.material', 'spruce']]);
  expect(remade('stock.faced.core', core, '', 'metric')).toEqual([
    ['stock.faced.core.material', ''],
    ['stock.faced.core', '50 g/m²'],
  ]);
  expect(remade('stock.faced.glue', glue, 'spruce', 'metric')).toEqual([
    ['stock.faced.glue.material', 'spruce'],
    ['stock.faced.glue', '1 mm'],
  ]);
});
