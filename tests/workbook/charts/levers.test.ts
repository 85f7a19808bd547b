import { expect, test } from 'vitest';
import type { LeverChange, SweepProgress } from '../../../engine/index';
import { FIGURE_GAP, layOutBars } from '../../../workbook/charts/bars/layout';
import { barsOfLevers, changeTitle, effectsIn } from '../../../workbook/charts/levers/layout';
import { leverSentences } from '../../../workbook/charts/levers/words';
import { LABEL_SIZE, textWidth } from '../../../workbook/drawing/index';
import { leversProgress } from './levers-data';
import { designValues, optionTitles, pullChart, sweepNames } from './sweeps';

const title = (_: string, option: string): string | undefined => optionTitles[option];
const progress = leversProgress();
const data = barsOfLevers(progress, sweepNames, title);

test('a step up and one down stand under one name, what is changed to has its own, the strongest first', () => {
  const told = data.panels.map(({ title, groups }) => [
    title,
    ...groups.map(({ label, bars }) => [label, ...bars.map((bar) => bar.text)]),
  ]);
  expect(told).toEqual([
    [
      'Change of line pull, N',
      ['Line length', '−0.5\u00a0m: +0.880\u00a0N', '+0.5\u00a0m: −0.850\u00a0N'],
      ['Tail stock: to balsa', '−0.400\u00a0N'],
      ['Tail stock: to light ply', '+0.020\u00a0N'],
    ],
    [
      'Change of lap time, s',
      ['Line length', '+0.5\u00a0m: +0.140\u00a0s', '−0.5\u00a0m: −0.139\u00a0s'],
      ['Tail stock: to light ply', '+0.002\u00a0s'],
    ],
  ]);
});

test('the sentence names the strongest, and what moves nothing', () => {
  expect(leverSentences(data)).toEqual([
    'Line pull: line length does most, then tail stock. Engine station does not move it.',
    'Lap time: line length does most, then tail stock. Engine station does not move it.',
  ]);
});

test('a change without an answer has no bar', () => {
  const columns = [Float64Array.of(Number.NaN, 25, 24, 24, 24), progress.columns[1]!];
  const some = { ...progress, columns, why: Uint16Array.of(1, 0, 0, 0, 0), sentences: ['The lines go slack.'] };
  const [panel] = barsOfLevers(some, sweepNames, title).panels;
  expect(panel!.groups.flatMap(({ bars }) => bars.map(({ key }) => key))).not.toContain('0');
});

test('a change is told by its step, its value or its option, a temperature by how far', () => {
  const change = (path: string, way: LeverChange['way'], from: number, to: number): LeverChange => ({
    ...{ row: 0, path, way, from, to },
  });
  const told = (each: LeverChange): string => changeTitle(each, sweepNames.get(each.path)!, title);
  expect(told(change('engine_station', 'down', -0.15, -0.155))).toBe('Engine station: −5\u00a0mm');
  expect(told(change('line_length', 'to', 18.3, 20))).toBe('Line length: to 20\u00a0m');
  expect(told(change('tail_stock', 'to', 1, 2))).toBe('Tail stock: to light ply');
  const warm = { ...sweepNames.get('line_length')!, title: 'temperature', unit: '°C' };
  expect(changeTitle(change('t', 'up', 288.15, 293.15), warm)).toBe('Temperature: +5\u00a0°C');
});

test('on a narrow page no figure stands on another figure or a bar', () => {
  for (const width of [230, 320, 560]) {
    const props = {
      cell: pullChart,
      progress,
      names: sweepNames,
      checks: [],
      values: designValues(-0.145),
      baseline: undefined,
      ghost: undefined,
    };
    for (const { groups, box } of layOutBars(data, props, width).panels) {
      const bars = groups.flatMap((group) => group.bars);
      for (const bar of bars) {
        const long = textWidth(bar.text, LABEL_SIZE);
        const from = bar.leftward ? bar.end - FIGURE_GAP - long : bar.box.right + FIGURE_GAP;
        expect(from, bar.text).toBeGreaterThanOrEqual(box.left);
        expect(from + long, bar.text).toBeLessThanOrEqual(width);
        const beside = bars.filter((other) => other !== bar && other.middle === bar.middle);
        for (const other of beside) {
          const long = textWidth(other.text, LABEL_SIZE);
          const start = other.leftward ? other.end - FIGURE_GAP - long : other.box.left;
          const end = other.leftward ? other.box.right : other.box.right + FIGURE_GAP + long;
          expect(from + textWidth(bar.text, LABEL_SIZE) <= start || from >= end, `${bar.text} and ${other.text}`).toBe(
            true,
          );
        }
      }
    }
  }
});

test('all effects on one result have the decimals of the greatest', () => {
  const text = effectsIn(progress, 0, sweepNames.get('flight.pull')!);
  expect([0.88, 0.001, -12.3456].map(text)).toEqual(['+0.880\u00a0N', '+0.001\u00a0N', '−12.346\u00a0N']);
  const great: SweepProgress = { ...progress, columns: [Float64Array.of(424, 24, 24, 24, 24), progress.columns[1]!] };
  expect(effectsIn(great, 0, sweepNames.get('flight.pull')!)(399.6)).toBe('+400\u00a0N');
});
