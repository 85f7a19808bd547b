import type { ComponentType } from 'preact';
import type { ChartCell } from '../../engine/index';
import type { ChartProps, PartsChartProps, SweepChartProps, TraceChartProps } from './frame/props';

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
  line: async () => (await import('./line/view')).LineChart,
  bars: async () => (await import('./bars/view')).BarChart,
  moments: async () => (await import('./moments/view')).MomentChart,
  contour: async () => (await import('./contour/view')).ContourChart,
  carpet: async () => (await import('./carpet/view')).CarpetChart,
  scatter: async () => (await import('./scatter/view')).ScatterChart,
  histogram: async () => (await import('./histogram/view')).HistogramChart,
  shares: async () => (await import('./shares/view')).ShareChart,
  ring: async () => (await import('./ring/view')).RingChart,
  along: async () => (await import('./along/view')).AlongChart,
};
