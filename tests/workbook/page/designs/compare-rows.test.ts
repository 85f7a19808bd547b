import { expect, test } from 'vitest';
import { hangarOf } from '../../../../engine/study/hangar/index';
import { library } from '../../../../engine/study/library';
import { comparedRows } from '../../../../workbook/page/designs/compare-rows';
import { begunText } from '../../../engine/study/hangar/begun';

const tell = async (form: Parameters<typeof begunText>[0] = {}) =>
  (await hangarOf(library).tellDesign(begunText(form)))!;

test('two designs stand side by side in the units of the first, with what the second has more', async () => {
  const rows = comparedRows(await tell(), await tell({ span: '49 1/4"', size: '.35 cu in' }));
  const read = rows.map(({ title, first, second, difference }) => [title, first, second, difference].join(' | '));
  expect(read).toMatchInlineSnapshot(`
    [
      "All-up weight | 789 g | 1254 g | +465 g",
      "Line pull | 19.4 N | 28.8 N | +9.5 N",
      "Pull, × weight | 2.50 | 2.35 | −0.16",
      "Lap time | 5.51 s | 5.97 s | +0.46 s",
      "Span | 1000 mm | 1251 mm | +251 mm",
      "Wing area | 20 dm² | 31.3 dm² | +11.3 dm²",
      "CG | 39.9 mm | 50.2 mm | +10.2 mm",
      "CG on the mean chord | 19.9 % | 20.0 % | +0.1 %",
      "Static margin | 21.9 % | 21.8 % | −0.1 %",
      "Engine station | −130 mm | −207 mm | −77 mm",
      "Propeller diameter | 229 mm | 256 mm | +27 mm",
      "Eyelet to eyelet | 18.1 m | 19.9 m | +1.8 m",
      "Line diameter | 0.38 mm | 0.38 mm | 0",
      "Lines | 2 | 2 | 0",
      "Nose angle | 1.0° out | 1.0° out | 0",
      "Outboard wing | 0.16° high | 0.14° high | +0.02°",
      "Pull test over calm pull | 3.93 | 4.22 | +0.28",
      "Breaking load over calm pull | 18.0 | 12.1 | −5.9",
    ]
  `);
});

test('what one has no answer for has no difference, and what shows none is none', () => {
  const figure = (of: string, value: number) => ({ of, title: of, value, unit: 'g', suffix: '' });
  const told = (...figures: ReturnType<typeof figure>[]) => ({ kind: '', drawing: [], figures });
  const rows = comparedRows(
    told(figure('a', 0.1), figure('b', Number.NaN), figure('c', 0.5000001)),
    told(figure('b', 0.2), figure('c', 0.5), figure('d', 0.3)),
  );
  expect(rows.map(({ of, first, second, difference }) => [of, first, second, difference])).toEqual([
    ['a', '100\u00a0g', '–', ''],
    ['b', '–', '200\u00a0g', ''],
    ['c', '500\u00a0g', '500\u00a0g', '0'],
    ['d', '–', '300\u00a0g', ''],
  ]);
});
