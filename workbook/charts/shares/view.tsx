import { type BarKind, barDrawing } from '../bars/view';
import { barTable } from '../bars/words';
import { chartOf } from '../frame/kind';
import type { SweepChartProps } from '../frame/props';
import { type ShareData, sharesOf } from './layout';
import { shareSentences } from './words';

const kind: BarKind<SweepChartProps, ShareData> = {
  ...barDrawing,
  read: sharesOf,
  sentences: shareSentences,
  table: ({ data }) => barTable(data),
};

/** What makes how much of the spread of a result, the greatest first. */
export const ShareChart = chartOf(kind);
