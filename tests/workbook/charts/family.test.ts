import { expect, test } from 'vitest';
import { type Family, linePoints, readFamily } from '../../../workbook/charts/frame/family';
import type { SweepChartProps } from '../../../workbook/charts/frame/props';
import { withoutSharedEnd } from '../../../workbook/charts/frame/words';
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

const balance: SweepChartProps = {
  cell: balanceChart,
  progress: balanceSweep,
  names: sweepNames,
  values: designValues(),
  checks,
};
const pull: SweepChartProps = { ...balance, cell: pullChart, progress: pullSweep };
const read = (props: SweepChartProps): Family => {
  const family = readFamily(props);
  if (typeof family === 'string') throw new Error(family);
  return family;
};

test('each line has its own samples, the last axis running fastest', () => {
  const family = read(balance);
  expect(family.lines.map((l) => l.samples.slice(0, 3))).toEqual([
    [0, 3, 6],
    [1, 4, 7],
    [2, 5, 8],
  ]);
  expect(family.lines.map((l) => l.present)).toEqual([false, true, false]);
});

test('the same chart the other way round reads the same numbers', () => {
  const [station, stock] = balanceSweep.axes;
  const n = station!.values.length;
  const turned = {
    ...balanceSweep,
    axes: [stock!, station!],
    columns: balanceSweep.columns.map((c) => c.map((_, k) => c[(k % n) * 3 + Math.floor(k / n)]!)),
  };
  const a = read(balance);
  const b = read({ ...balance, progress: turned });
  for (const k of [0, 1, 2]) {
    expect(linePoints(b, b.panels[0]!, b.lines[k]!, turned)).toEqual(
      linePoints(a, a.panels[0]!, a.lines[k]!, balanceSweep),
    );
  }
});

test('numbers stand in the units of their names', () => {
  const family = read(balance);
  const [first] = linePoints(family, family.panels[0]!, family.lines[0]!, balanceSweep);
  expect(first!.x).toBeCloseTo(-180, 9);
  expect(first!.y).toBeCloseTo(32.3, 9);
  expect(family.panels.map((p) => p.title)).toEqual(['CG aft of the root leading edge, mm', 'CG on the mean chord, %']);
  expect(read(pull).panels[1]!.title).toBe('Line pull per weight, g');
});

test('lines are called as the document calls the options', () => {
  const named = read({ ...balance, optionTitle: (_, option) => optionTitles[option] });
  expect(named.lines.map((l) => l.label)).toEqual(['balsa', 'balsa–ply', 'light ply']);
});

test('what all lines are is not said of each', () => {
  const titles = ['0.30 mm, stranded steel', '0.38 mm, stranded steel', '0.46 mm, stranded steel'];
  expect(withoutSharedEnd(titles)).toEqual(['0.30 mm', '0.38 mm', '0.46 mm']);
  expect(withoutSharedEnd(['balsa, 5 mm', 'light ply, 3 mm'])).toEqual(['balsa, 5 mm', 'light ply, 3 mm']);
  expect(withoutSharedEnd(['balsa, 5 mm'])).toEqual(['balsa, 5 mm']);
});

test('a sample without an answer is a gap, one not computed yet is no point at all', () => {
  const half = { ...pullSweep, why: pullSweep.why.map((w, k) => (k >= 60 ? 65535 : w)) };
  const family = read({ ...pull, progress: half });
  const points = linePoints(family, family.panels[0]!, family.lines[2]!, half);
  expect(points).toHaveLength(20);
  expect(points.filter((p) => Number.isNaN(p.y))).toHaveLength(1);
});

test('an axis that the chart does not show is held at the value nearest to the present design', () => {
  const held = read({ ...balance, cell: { ...balanceChart, lines: '' }, values: designValues(-0.15, 2) });
  expect(held.held).toEqual(['Tail stock light ply']);
  expect(held.lines).toHaveLength(1);
  expect(held.lines[0]!.samples.slice(0, 2)).toEqual([2, 5]);
});

test.each([
  [{ across: 'tip_weight' }, 'The trial series does not run along “tip_weight”. Choose one of its axes.'],
  [
    { lines: 'line_set' },
    'The trial series does not run along line set. Choose one of its axes for the lines, or none.',
  ],
  [{ up: ['flight.grip', 'flight.hold'] }, 'flight.grip, flight.hold: no such result. Choose a result for the chart.'],
])('a chart that asks for what is not there says so: %j', (change, sentence) => {
  expect(readFamily({ ...balance, cell: { ...balanceChart, ...change } })).toBe(sentence);
});
