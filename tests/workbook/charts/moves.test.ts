import { expect, test } from 'vitest';
import { readFamily } from '../../../workbook/charts/frame/family';
import { handlesOf, textByKey } from '../../../workbook/charts/frame/moves';
import type { Hand, SweepChartProps } from '../../../workbook/charts/frame/props';
import { layOutChart } from '../../../workbook/charts/line/layout';
import { balanceChart, balanceSweep, checks, designValues, sweepNames } from './sweeps';

const hand = (takes: boolean): Hand => ({ takes: () => takes, move: () => {}, rest: () => {} });
const props = (more: Partial<SweepChartProps> = {}): SweepChartProps => ({
  ...{ cell: balanceChart, progress: balanceSweep, names: sweepNames, values: designValues(-0.145), checks },
  hand: hand(true),
  ...more,
});

function handles(of: SweepChartProps) {
  const family = readFamily(of);
  if (typeof family === 'string') throw new Error(family);
  const chart = layOutChart(family, of, 560);
  return { chart, all: handlesOf({ across: family.across }, chart.panels, of) };
}

test('the present design can be taken in every panel, and a place across is a number of its axis', () => {
  const { chart, all } = handles(props());
  expect(all).toHaveLength(chart.panels.length);
  const [way] = all[0]!.ways;
  expect(way).toMatchObject({ path: 'engine_station', along: 'across' });
  const at = (shown: number) => way!.textAt({ x: chart.x(shown), y: 0 });
  expect([at(-180), at(-150.04), at(-120)]).toEqual(['-180.00 mm', '-150.05 mm', '-120.00 mm']);
});

test('beyond the ends of the axis it stays at the end', () => {
  const { all } = handles(props());
  expect(all[0]!.ways[0]!.textAt({ x: -1000, y: 0 })).toBe('-180.00 mm');
  expect(all[0]!.ways[0]!.textAt({ x: 5000, y: 0 })).toBe('-120.00 mm');
});

test('an arrow key goes a small part of the axis, and only along an axis that there is', () => {
  const [handle] = handles(props()).all;
  expect(textByKey(handle!.ways, 'ArrowRight')?.text).toBe('-144.50 mm');
  expect(textByKey(handle!.ways, 'ArrowLeft')?.text).toBe('-145.50 mm');
  expect(textByKey(handle!.ways, 'ArrowUp')).toBeUndefined();
  expect(textByKey(handle!.ways, 'a')).toBeUndefined();
});

test('what is calculated can not be moved, nor a chart that only shows', () => {
  expect(handles(props({ hand: hand(false) })).all).toEqual([]);
  const { hand: _, ...shown } = props();
  expect(handles(shown).all).toEqual([]);
});
