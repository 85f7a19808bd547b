import { expect, test } from 'vitest';
import type { Cell, CellKind } from '../../../engine/index';
import { bandsOf } from '../../../workbook/page/sides';

const piece = (kind: CellKind, k: number): Cell =>
  ({ kind, id: `${kind}${k}`, name: `${kind}${k}` }) as unknown as Cell;
/** What stands where on a wide window: bands from the top, their columns from the left. */
const bands = (...kinds: CellKind[]) =>
  bandsOf(kinds.map(piece)).map((sides) => sides.map((side) => side.map(({ id }) => id)));

test('what is set stands at the left and what follows at the right', () => {
  expect(bands('variables', 'chart', 'choice', 'trial_series')).toEqual([
    [
      ['variables0', 'choice2'],
      ['chart1', 'trial_series3'],
    ],
  ]);
});
test('where what is set leaves much room, the last of what follows stands with it, each column in the order of the sheet', () => {
  expect(bands('note', 'variables', 'chart', 'chart', 'what_helps', 'check')).toEqual([
    [
      ['note0', 'variables1', 'what_helps4', 'check5'],
      ['chart2', 'chart3'],
    ],
  ]);
  expect(bands('note', 'chart')).toEqual([[['note0'], ['chart1']]]);
});
test('pieces of one sort are cut in the middle', () => {
  expect(bands('model', 'model', 'model', 'model')).toEqual([
    [
      ['model0', 'model1'],
      ['model2', 'model3'],
    ],
  ]);
});
test('a table of many columns takes both, in reading order', () => {
  expect(bands('note', 'parts', 'model', 'chart')).toEqual([[['note0']], [['parts1']], [['model2'], ['chart3']]]);
  expect(bands('note', 'log', 'fit')).toEqual([[['note0']], [['log1']], [['fit2']]]);
});
