import { describe, expect, test } from 'vitest';
import type { ChartCell, CheckCell, NameInfo, SweepProgress } from '../../../engine/index';
import { LENGTH, ONE } from '../../../engine/units/index';
import { readFamily } from '../../../workbook/charts/frame/family';
import { limitSentences } from '../../../workbook/charts/frame/limit-words';
import { checkZones, zonesOf } from '../../../workbook/charts/frame/limits';
import { measure } from '../../../workbook/charts/frame/measure';
import type { SweepChartProps } from '../../../workbook/charts/frame/props';
import { isStop, stopSentences } from '../../../workbook/charts/frame/stop-words';
import { sharedLimitSentences } from '../../../workbook/charts/line/shared-limits';

const grounds = ['pavement', 'short grass', 'long grass'] as const;
const least = { at: 1, because: 'it noses over at release' };
const info = (path: string, slot: number, title: string, more: Partial<NameInfo> = {}): NameInfo => ({
  ...{ path, slot, kind: 'result', cell: 'c', title, symbol: '', dimension: ONE, unit: '', suffix: '', doc: '' },
  settable: false,
  ...more,
});
const names = new Map(
  [
    info('axle', 0, 'Axle', { dimension: LENGTH, unit: 'mm' }),
    ...grounds.map((ground, k) => info(`gear.m${k}`, k + 1, `Nose-over margin on ${ground}`, { least })),
    info('short.low', 4, 'Least'),
  ].map((each) => [each.path, each]),
);
/** Made-up margins that fall as the axle moves aft: 0 to 40 mm. */
const axle = Float64Array.from({ length: 41 }, (_, k) => k / 1000);
const margins = [6, 2.4, 1.4].map((at0) => axle.map((x) => at0 - 25 * x));
const progress: SweepProgress = {
  ...{ revision: 1, sweep: 'axles', axes: [{ path: 'axle', values: axle }], why: new Uint16Array(41) },
  ...{ wanted: ['gear.m0', 'gear.m1', 'gear.m2'], columns: margins, sentences: [], done: 41, total: 41, state: 'done' },
};
const cell: ChartCell = {
  ...{ id: 'c1', name: 'axle_chart', title: 'Margins', kind: 'chart', chart: 'line', series: 'axles', across: 'axle' },
  ...{ up: ['gear.m0', 'gear.m1', 'gear.m2'], lines: '', together: true },
};
const short: CheckCell = {
  ...{ kind: 'check', id: 'k', name: 'short', title: 'Keeps off its nose', of: 'gear.m1', low: '1.5', high: '' },
  ...{ below: 'it noses over', above: '' },
};
const props = (checks: readonly CheckCell[] = [short], now = [0.02, 5.5, 2, 0.9, 1.5]): SweepChartProps => ({
  ...{ cell, progress, names, checks, values: Float64Array.from(now) },
});
function family(of: SweepChartProps) {
  const read = readFamily(of);
  if (typeof read === 'string') throw new Error(read);
  return read;
}

describe('a result that may not come under its least', () => {
  const zones = (path: string, checks: readonly CheckCell[]) =>
    zonesOf(measure(names.get(path)!), checks, names, props().values).map(({ limitSI, own }) => [
      limitSI,
      own === true,
    ]);
  test('has that limit on every chart, unless a check stops before it', () => {
    expect(zones('gear.m2', [])).toEqual([[1, true]]);
    expect(zones('gear.m1', [short])).toEqual([[1.5, false]]);
    expect(checkZones(measure(names.get('gear.m2')!), [], names, props().values)).toEqual([]);
  });
  test('is said where it comes under it along the chart, and not where it never does', () => {
    expect(limitSentences(family(props()), props())).toEqual([
      'Nose-over margin on short grass in its limit up to 36\u00a0mm.',
      'Nose-over margin on long grass in its limit up to 16\u00a0mm.',
    ]);
  });
  test('is said first, and red, where the present design is under it', () => {
    const [said, ...others] = stopSentences(props());
    expect(said).toBe('Stop: the nose-over margin on long grass is 0.9 now, under 1: it noses over at release.');
    expect(isStop(said!)).toBe(true);
    expect(others).toEqual([]);
    expect(stopSentences(props([], [0, 6, 2, 1, 1.5]))).toEqual([]);
  });
});

test('a limit that is drawn for one of several like quantities is named for all of them', () => {
  expect(sharedLimitSentences(family(props()), props())).toEqual([
    'Within the limit of nose-over margin on short grass: on pavement everywhere; on long grass nowhere.',
  ]);
  const others = new Map([...names, ['gear.m2', { ...names.get('gear.m2')!, title: 'Sink speed' }]]);
  const odd = { ...props(), names: others };
  expect(sharedLimitSentences(family(odd), odd)).toEqual([
    'Within the limit of nose-over margin on short grass: on pavement everywhere.',
  ]);
  const apart = { ...props(), cell: { ...cell, together: false } };
  expect(sharedLimitSentences(family(apart), apart)).toEqual([]);
});
