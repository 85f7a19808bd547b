import { expect, test } from 'vitest';
import { readFamily } from '../../../workbook/charts/frame/family';
import { limitNotes } from '../../../workbook/charts/frame/limit-words';
import { reasonInBrief } from '../../../workbook/charts/frame/limits';
import type { SweepChartProps } from '../../../workbook/charts/frame/props';
import { type LineLayout, layOutChart } from '../../../workbook/charts/line/layout';
import { type Box, overlaps, textWidth } from '../../../workbook/drawing/index';
import {
  balanceChart,
  balanceSweep,
  checks,
  designValues,
  optionTitles,
  pullChart,
  pullSweep,
  sweepNames,
} from './sweeps';

const props = (more: Partial<SweepChartProps>): SweepChartProps => ({
  cell: balanceChart,
  progress: balanceSweep,
  names: sweepNames,
  values: designValues(),
  checks,
  optionTitle: (_, option) => optionTitles[option],
  ...more,
});

function layOut(more: Partial<SweepChartProps>, width: number, before?: LineLayout): LineLayout {
  const all = props(more);
  const family = readFamily(all);
  if (typeof family === 'string') throw new Error(family);
  return layOutChart(family, all, width, before);
}

const boxesOf = (chart: LineLayout): Box[] =>
  chart.panels.flatMap((p) => [
    ...p.zones.flatMap((z) => (z.words ? [z.words.box] : [])),
    ...p.spots.flatMap((s) => (s.label ? [s.label.box] : [])),
    ...p.ends.map((e) => {
      const half = (e.lines.length * 12) / 2;
      const width = Math.max(...e.lines.map((line) => textWidth(line, 11)));
      return { left: e.at.x, right: e.at.x + width, top: e.at.y - half, bottom: e.at.y + half };
    }),
  ]);

const baseline = designValues(-0.158, 0, 17, 1);

test.each([
  ['balance', 320],
  ['balance', 560],
  ['pull', 320],
  ['pull', 560],
] as const)('no two words of the %s chart meet at %i px while the present design slides along', (kind, width) => {
  let before: LineLayout | undefined;
  for (let k = 0; k <= 40; k++) {
    const values = kind === 'balance' ? designValues(-0.18 + k * 0.0015, 1) : designValues(-0.15, 1, 15 + k * 0.1625);
    const cell = kind === 'balance' ? balanceChart : pullChart;
    const progress = kind === 'balance' ? balanceSweep : pullSweep;
    const chart = layOut({ cell, progress, values, baseline }, width, before);
    const boxes = boxesOf(chart);
    for (const [n, a] of boxes.entries()) {
      expect(a.right).toBeLessThanOrEqual(width);
      for (const b of boxes.slice(n + 1)) expect(overlaps(a, b), `step ${k}: ${JSON.stringify([a, b])}`).toBe(false);
    }
    before = chart;
  }
});

test('the mark of the present design stands where its numbers are on the axes', () => {
  const chart = layOut({ values: designValues(-0.14, 1) }, 560);
  const [panel] = chart.panels;
  const { at, text } = panel!.spots.find((s) => s.kind === 'now')!;
  expect(at.x).toBeCloseTo(chart.x(-140), 9);
  expect(at.y).toBeCloseTo(panel!.y(48.9), 9);
  expect(text).toBe('now 48.9');
});

test('the axes run to the right and upward', () => {
  const chart = layOut({}, 560);
  const [panel] = chart.panels;
  expect(chart.x(-180)).toBeCloseTo(panel!.box.left, 9);
  expect(chart.x(-120)).toBeCloseTo(panel!.box.right, 9);
  expect(panel!.y(panel!.up.range[0])).toBeCloseTo(panel!.box.bottom, 9);
  expect(panel!.y(panel!.up.range[1])).toBeCloseTo(panel!.box.top, 9);
});

test('a baseline that is the present design is not drawn twice', () => {
  const kinds = (chart: LineLayout): string[] => chart.panels[0]!.spots.map((s) => s.kind);
  expect(kinds(layOut({ baseline: designValues() }, 560))).toEqual(['now']);
  expect(kinds(layOut({ baseline }, 560))).toEqual(['now', 'baseline']);
});

test('limits stand in the panel of their check with their reasons', () => {
  const [cg, share] = layOut({}, 560).panels;
  expect(cg!.zones.map(({ zone, words }) => [zone.side, Math.round(zone.limit), words?.lines.join(' ')])).toEqual([
    ['below', 38, 'under 38\u00a0mm: nose-heavy: elevator runs out on grass'],
    ['above', 55, 'over 55\u00a0mm: too far aft: static margin under 8 %'],
  ]);
  expect(share!.zones).toEqual([]);
});

test('a limit that is left open or has no value forbids nothing', () => {
  const values = designValues();
  values[sweepNames.get('cg_check.low')!.slot] = Number.NaN;
  const sides = (more: Partial<SweepChartProps>): string[] =>
    layOut(more, 560).panels[0]!.zones.map((z) => z.zone.side);
  expect(sides({ values })).toEqual(['above']);
  expect(sides({ checks: checks.map((c) => ({ ...c, high: '' })) })).toEqual(['below']);
});

test('a line that breaks off has its name at its own end', () => {
  const [panel] = layOut({ cell: pullChart, progress: pullSweep }, 560).panels;
  const early = panel!.ends.find((e) => e.lines.join(' ') === '0.46 mm stranded')!;
  expect(early.at.x).toBeLessThan(panel!.box.right);
  expect(panel!.ends.filter((e) => e.at.x > panel!.box.right)).toHaveLength(2);
});

test('an axis of options has their names under it and one place for each', () => {
  const chart = layOut({ cell: { ...balanceChart, across: 'tail_stock', lines: '' } }, 560);
  expect(chart.panels.at(-1)!.across.ticks!.values.map((v) => chart.panels.at(-1)!.across.ticks!.text(v))).toEqual([
    'balsa',
    'balsa–ply',
    'light ply',
  ]);
  expect(chart.xTitle!.text).toBe('Tail stock');
});

test('without any answer there is still a chart', () => {
  const nothing = designValues().fill(Number.NaN);
  const chart = layOut({ values: nothing, progress: { ...balanceSweep, why: balanceSweep.why.map(() => 1) } }, 560);
  expect(chart.panels.every((p) => p.ends.length === 0 && p.spots.length === 0)).toBe(true);
});

test.each([
  [
    'Stop if the CG is ahead of 38 mm: nose-heavy, the elevator runs out on grass.',
    'nose-heavy, the elevator runs out on grass',
  ],
  ['nose-heavy: elevator runs out on grass', 'nose-heavy: elevator runs out on grass'],
  ['', ''],
])('of the reason "%s" the zone says "%s"', (reason, brief) => {
  expect(reasonInBrief(reason)).toBe(brief);
});

test('a reason too long for its zone, and a limit too far off, stand under the chart instead', () => {
  const long = 'the model answers the elevator too late to be caught by a junior pilot '.repeat(4).trim();
  const [panel] = layOut({ checks: checks.map((c) => ({ ...c, above: long })) }, 320).panels;
  expect(limitNotes([panel!])).toEqual([`CG aft of the root leading edge over 55\u00a0mm: ${long}.`]);
  const values = designValues();
  values[sweepNames.get('cg_check.low')!.slot] = -0.2;
  expect(limitNotes(layOut({ values }, 560).panels)).toEqual([
    'Outside the picture: CG aft of the root leading edge under −200\u00a0mm: nose-heavy: elevator runs out on grass.',
  ]);
});
