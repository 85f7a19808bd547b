import type { JSX } from 'preact';
import { ink, LABEL_SIZE } from '../../drawing/index';
import { aboutChart } from '../frame/about';
import { chartOf } from '../frame/kind';
import { halo, round } from '../frame/marks';
import { lineStyle } from '../frame/palette';
import type { SweepChartProps } from '../frame/props';
import { type SampleColumn, samplesOf } from '../frame/samples';
import { type HistogramPanel, layOutHistogram } from './layout';
import { histogramReadings, histogramSentences, histogramTable } from './words';

/** How the designs of a sweep spread over a result. */
export const HistogramChart = chartOf({
  read,
  layOut: layOutHistogram,
  Under: Bins,
  about: ({ data }) =>
    aboutChart(
      'Histogram: numbers of designs',
      [],
      data.map(({ title }) => title),
    ),
  sentences: histogramSentences,
  readings: histogramReadings,
  table: histogramTable,
});

function read(props: SweepChartProps): readonly SampleColumn[] | string {
  const columns = props.cell.up.flatMap((path) => samplesOf(props, path) ?? []);
  return columns.length > 0
    ? columns
    : `${props.cell.up.join(', ')}: no such result. Choose a result of the trial series for the chart.`;
}

function Bins({ panel }: { panel: HistogramPanel }): JSX.Element {
  const { line } = lineStyle(0);
  return (
    <>
      {panel.bins.map(({ from, count, bar }) => (
        <rect
          key={from}
          data-count={count}
          x={round(bar.left)}
          y={round(bar.top)}
          width={round(bar.right - bar.left)}
          height={round(bar.bottom - bar.top)}
          fill={line}
          fill-opacity={0.22}
          stroke={line}
          stroke-width={count === 0 ? 0 : 1.2}
        />
      ))}
      {panel.percentiles.map(({ text, x, label }) => (
        <g key={text} data-line={text}>
          <line
            x1={round(x)}
            x2={round(x)}
            y1={round(label.bottom)}
            y2={panel.box.bottom}
            stroke={ink('ink')}
            stroke-width={0.9}
            stroke-dasharray="7 2 1.5 2"
          />
          <text x={round(label.left + 2)} y={round(label.top + LABEL_SIZE)} {...halo}>
            {text}
          </text>
        </g>
      ))}
      {panel.spots.map(({ kind, at }) => (
        <line
          key={kind}
          data-line={kind}
          x1={round(at.x)}
          x2={round(at.x)}
          y1={panel.box.top}
          y2={round(at.y)}
          stroke={ink(kind === 'now' ? 'ink' : 'muted')}
          stroke-width={kind === 'now' ? 1.2 : 1.6}
          stroke-dasharray={kind === 'now' ? undefined : '0.1 3.6'}
          stroke-linecap="round"
        />
      ))}
    </>
  );
}
