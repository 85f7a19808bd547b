import type { ComponentType } from 'preact';
import type { ChartCell } from '../../engine/index';
import type { SweepChartProps } from './props';

/** Every kind of chart and where its code is; it comes when the first chart of the kind is on the screen. */
export const chartKinds: Readonly<Partial<Record<ChartCell['chart'], () => Promise<ComponentType<SweepChartProps>>>>> =
  {
    line: async () => (await import('./line-chart')).LineChart,
  };
