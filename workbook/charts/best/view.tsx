import { aboutChart } from '../frame/about';
import { chartOf } from '../frame/kind';
import { limitNotes } from '../frame/limit-words';
import type { SweepChartProps } from '../frame/props';
import { samplesOf } from '../frame/samples';
import type { ScatterData, ScatterLayout, ScatterPanel } from '../scatter/layout';
import { scatterDrawing } from '../scatter/view';

export interface BestChartProps extends SweepChartProps {
  /** So many of the samples are beaten by others; the best ones come after them. */
  readonly beaten: number;
}

/** The best designs among those that they beat: each wish against the first one. */
export const BestChart = chartOf<BestChartProps, ScatterData, ScatterPanel, ScatterLayout>({
  ...scatterDrawing,
  read(props) {
    const across = samplesOf(props, props.cell.across);
    const ups = props.cell.up.flatMap((path) => samplesOf(props, path) ?? []);
    if (!across || ups.length === 0) return 'There is nothing to draw yet.';
    const of = across.values.map((_, sample) => (sample < props.beaten ? 0 : 1));
    return { across, ups, groups: { labels: ['beaten by another', 'beaten by none'], of } };
  },
  about: ({ data: { across, ups }, chart }) =>
    aboutChart(
      'A sign for each design:',
      ups.map(({ title }) => title),
      [across.title],
      chart.key.map(({ label }) => label),
    ).replace(': of', ':'),
  sentences: ({ chart }) => limitNotes(chart.panels),
});
