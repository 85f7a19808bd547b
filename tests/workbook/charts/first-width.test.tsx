import { afterEach, expect, test, vi } from 'vitest';
import { type ChartKind, chartOf } from '../../../workbook/charts/frame/kind';
import type { DrawnPanel, Laid } from '../../../workbook/charts/frame/panels';
import type { SweepChartProps } from '../../../workbook/charts/frame/props';
import { openPage } from '../drawing/page';
import { balanceChart, balanceSweep, checks, designValues, sweepNames } from './sweeps';

class Observer {
  observe(): void {}
  disconnect(): void {}
}

afterEach(() => {
  vi.unstubAllGlobals();
  Reflect.deleteProperty(window.Element.prototype, 'clientWidth');
});

test('a chart is laid out once, when it is known how wide its place is', async () => {
  const page = openPage();
  vi.stubGlobal('ResizeObserver', Observer);
  Object.defineProperty(window.Element.prototype, 'clientWidth', { configurable: true, get: () => 700 });
  const widths: number[] = [];
  const kind: ChartKind<SweepChartProps, null, DrawnPanel, Laid> = {
    read: () => null,
    layOut(_data, _of, width) {
      widths.push(width);
      return { width, height: 100, panels: [] };
    },
    about: () => 'An empty chart.',
    sentences: () => [],
    readings: () => [],
    table: () => ({ head: [], rows: [] }),
  };
  const Empty = chartOf(kind);
  page.show(
    <Empty cell={balanceChart} progress={balanceSweep} names={sweepNames} values={designValues()} checks={checks} />,
  );
  expect(page.body.querySelector('[aria-busy="true"]')).not.toBeNull();
  await vi.waitFor(() => expect(page.body.querySelector('svg')).not.toBeNull());
  expect(widths).toEqual([700]);
});
