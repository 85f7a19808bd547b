import { type BarKind, barDrawing } from '../bars/view';
import { aboutChart } from '../frame/about';
import { chartOf } from '../frame/kind';
import type { SweepChartProps } from '../frame/props';
import { barsOfLevers, type LeverBars } from './layout';
import { leverSentences, leverTable } from './words';

const kind: BarKind<SweepChartProps, LeverBars> = {
  ...barDrawing,
  read({ progress, names, optionTitle }) {
    const data = barsOfLevers(progress, names, optionTitle);
    if (data.panels.some(({ groups }) => groups.length > 0)) return data;
    return leverSentences(data).join(' ') || 'No change has an answer yet.';
  },
  about: ({ data: { panels } }) =>
    aboutChart(
      'Bars both ways from nothing:',
      panels.map(({ title }) => title),
      [],
    ).replace(': of', ':'),
  sentences: ({ data }) => leverSentences(data),
  table: leverTable,
};

/** What each change does to each result: bars both ways from nothing, the strongest first. */
export const LeverChart = chartOf(kind);
