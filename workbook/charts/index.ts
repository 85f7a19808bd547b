export type { SweepChartProps } from './props';
export { SweepChart } from './sweep-chart';
