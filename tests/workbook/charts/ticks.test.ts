import { expect, test } from 'vitest';
import { optionTicks, roundTicks } from '../../../workbook/charts/frame/ticks';

test.each([
  [[-30, 30], 7, ['−30', '−20', '−10', '0', '10', '20', '30']],
  [[4.01, 5.93], 4, ['4.5', '5.0', '5.5']],
  [[2.6, 2.71], 3, ['2.60', '2.65', '2.70']],
  [[900, 2100], 3, ['1000', '1500', '2000']],
] as const)('%j in about %i ticks', (range, count, texts) => {
  const ticks = roundTicks(range, count);
  expect(ticks.values.map((v) => ticks.text(v))).toEqual(texts);
});

test('options stand under their places', () => {
  const ticks = optionTicks(['balsa', 'balsa–ply', 'light ply'], Float64Array.of(0, 2));
  expect(ticks.values.map((v) => ticks.text(v))).toEqual(['balsa', 'light ply']);
});
