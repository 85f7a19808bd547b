import { aboutChart } from '../frame/about';
import { chartOf } from '../frame/kind';
import type { TraceChartProps } from '../frame/props';
import { type LineLayout, layOutPlot } from '../line/layout';
import { LineNames, Lines } from '../line/lines';
import { type Along, plotAlong, readAlong } from './layout';
import { alongReadings, alongSentences, alongTable } from './words';

/** What runs along something as lines: one panel for each unit, one line for each quantity. */
export const AlongChart = chartOf({
  read: readAlong,
  layOut: (along: Along, of: TraceChartProps, width, before: LineLayout | undefined) =>
    layOutPlot(plotAlong(along, of), width, of.moving, before),
  Under: Lines,
  Over: LineNames,
  about: ({ data: { across, shown } }) =>
    aboutChart(
      'Lines',
      shown.map(({ title }) => title),
      [across.title],
    ),
  sentences: alongSentences,
  readings: alongReadings,
  table: ({ of, data }) => alongTable(data, of.trace),
  start: ({ panels }) => panels[0]?.lines[0]?.placed[0],
});
