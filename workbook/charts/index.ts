export { Chart } from './chart';
export type { ChartProps } from './props';
export { causesSentence } from './spread-words';
