export { Chart } from './chart';
export type { ChartProps } from './props';
