import { aboutChart } from '../frame/about';
import { readFamily } from '../frame/family';
import { chartOf } from '../frame/kind';
import { layOutChart } from './layout';
import { LineNames, Lines } from './lines';
import { lineReadings, lineSentences, lineTable } from './words';

/** A sweep as lines: one panel for each result, one line for each value of the axis that tells them apart. */
export const LineChart = chartOf({
  read: readFamily,
  layOut: layOutChart,
  Under: Lines,
  Over: LineNames,
  about: ({ data: { panels, across, lines } }) =>
    aboutChart(
      'Lines',
      panels.map(({ title }) => title),
      [across.title],
      lines.map(({ label }) => label),
    ),
  moves: ({ across, options }) => (options ? {} : { across }),
  sentences: lineSentences,
  readings: lineReadings,
  table: ({ of, data }) => lineTable(data, of),
});
