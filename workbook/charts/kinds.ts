import type { ComponentType } from 'preact';
import type { ChartCell } from '../../engine/index';
import type { ChartProps, PartsChartProps, SweepChartProps, TraceChartProps } from './props';

type Kind = ChartCell['chart'];

/** What each kind of chart is given: what its kind is drawn from, as `chartNeeds` says. */
interface Takes extends Record<Kind, ChartProps> {
  line: SweepChartProps;
  bars: SweepChartProps | PartsChartProps;
  moments: PartsChartProps;
  contour: SweepChartProps;
  carpet: SweepChartProps;
  scatter: SweepChartProps;
  histogram: SweepChartProps;
  shares: SweepChartProps;
  ring: TraceChartProps;
  along: TraceChartProps;
}

/** Every kind of chart and where its code is; it comes when the first chart of the kind is on the screen. */
export const chartKinds: { readonly [K in Kind]: () => Promise<ComponentType<Takes[K]>> } = {
  line: async () => (await import('./line-chart')).LineChart,
  bars: async () => (await import('./bar-chart')).BarChart,
  moments: async () => (await import('./moment-chart')).MomentChart,
  contour: async () => (await import('./contour-chart')).ContourChart,
  carpet: async () => (await import('./carpet-chart')).CarpetChart,
  scatter: async () => (await import('./scatter-chart')).ScatterChart,
  histogram: async () => (await import('./histogram-chart')).HistogramChart,
  shares: async () => (await import('./share-chart')).ShareChart,
  ring: async () => (await import('./ring-chart')).RingChart,
  along: async () => (await import('./along-chart')).AlongChart,
};
