export { Chart } from './chart';
export { LeverPicture } from './lever-picture';
export { changeTitle, effectsIn } from './levers';
export type { ChartProps } from './props';
export { causesSentence } from './spread-words';
