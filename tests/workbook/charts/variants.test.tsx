import type { ComponentChild } from 'preact';
import { expect, test } from 'vitest';
import { AlongChart } from '../../../workbook/charts/along/view';
import { BarChart } from '../../../workbook/charts/bars/view';
import type { ChartProps, SweepChartProps } from '../../../workbook/charts/frame/props';
import { HistogramChart } from '../../../workbook/charts/histogram/view';
import { MomentChart } from '../../../workbook/charts/moments/view';
import { RingChart } from '../../../workbook/charts/ring/view';
import { openPage } from '../drawing/page';
import { alongProps } from './along-data';
import { partsProps, ringProps } from './parts-data';
import { balanceChart, balanceGhost, balanceSweep, designValues, sweepNames } from './sweeps';

const page = openPage();
type Others = NonNullable<ChartProps['others']>;

/** Signs of variants by how many corners they have, how many lines of theirs there are, and what the caption says of them. */
function variantsOn(chart: ComponentChild) {
  page.show(chart);
  const signs = [...page.body.querySelectorAll('svg [data-mark="variant"]')];
  return {
    corners: signs.map((sign) => sign.getAttribute('d')!.split('L').length),
    lines: page.body.querySelectorAll('svg [data-line="variant"]').length,
    says: page.body.querySelector('.chart-caption')!.textContent!.match(/Square: .*$/)?.[0],
  };
}

/** The same masses and moments, each so many times as great. */
const partsTimes = (times: number): Float64Array => partsProps().values.map((value) => value * times);
const others: Others = [
  { name: 'Heavier', values: partsTimes(1.1) },
  { name: 'As set', values: partsTimes(1) },
];

test('bars of parts have a line and a sign where a variant says something else', () => {
  const { corners, lines, says } = variantsOn(<BarChart {...partsProps()} others={others} width={600} />);
  // Every part but the paint, which has no mass.
  expect(lines).toBe(13);
  expect(new Set(corners)).toEqual(new Set([4]));
  expect(says).toBe('Square: Heavier.');
});

test('bars of a trial series have those of its variants', () => {
  const bars: SweepChartProps = {
    names: sweepNames,
    checks: [],
    cell: { ...balanceChart, chart: 'bars', across: 'tail_stock', lines: '' },
    progress: balanceSweep,
    values: designValues(-0.145),
  };
  const ghost = { ...balanceGhost, axes: [balanceSweep.axes[1]!] };
  const { corners, says } = variantsOn(
    <BarChart {...bars} others={[{ name: 'Ply', values: designValues(), ghost }]} width={600} />,
  );
  expect(corners.length).toBeGreaterThan(0);
  expect(says).toBe('Square: Ply.');
});

test('the stacks of moments have one where a variant ends otherwise', () => {
  const { corners, lines, says } = variantsOn(
    <MomentChart {...partsProps({ chart: 'moments', up: [] })} others={others} width={600} />,
  );
  expect([lines, corners]).toEqual([2, [4, 4]]);
  expect(says).toBe('Square: Heavier.');
});

test('a histogram has them on its axis', () => {
  const histogram: SweepChartProps = {
    names: sweepNames,
    checks: [],
    cell: { ...balanceChart, chart: 'histogram', up: ['balance.cg_x'], lines: '' },
    progress: balanceSweep,
    values: designValues(-0.145),
  };
  const { corners, says } = variantsOn(
    <HistogramChart {...histogram} others={[{ name: 'Forward', values: designValues(-0.158) }]} width={600} />,
  );
  expect([corners, says]).toEqual([[4], 'Square: Forward.']);
});

test('a ring has a closed line for each, with its sign where it is greatest', () => {
  const ring = ringProps();
  const trace = ring.trace.present.map((column, k) => (k === 0 ? column : column.map((value) => value * 0.8)));
  const { corners, lines, says } = variantsOn(
    <RingChart
      {...ring}
      others={[
        { name: 'Slower', values: ring.values, trace },
        { name: 'Not yet', values: ring.values },
      ]}
      width={600}
    />,
  );
  expect([corners, lines, says]).toEqual([[4], 1, 'Square: Slower.']);
});

test('what runs along something has a line for each, with its sign and value at its end', () => {
  const along = alongProps();
  const trace = along.trace.present.map((column) => column.map((value) => value * 0.9));
  const { corners, lines, says } = variantsOn(
    <AlongChart
      {...along}
      others={[
        { name: 'Not yet', values: along.values },
        { name: 'Shorter run', values: along.values, trace },
      ]}
      width={600}
    />,
  );
  expect(lines).toBe(along.cell.up.length);
  expect(new Set(corners)).toEqual(new Set([3]));
  expect(says).toBeUndefined();
  expect(page.body.querySelector('.chart-caption')!.textContent).toContain('Triangle: Shorter run.');
});
