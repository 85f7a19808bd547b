import type { JSX } from 'preact';
import { LABEL_SIZE } from '../../drawing/index';
import { aboutChart } from '../frame/about';
import { readLines } from '../frame/family';
import { type ChartKind, chartOf } from '../frame/kind';
import { round } from '../frame/marks';
import type { SweepChartProps } from '../frame/props';
import { placesAlong, samplesOf } from '../frame/samples';
import { signsPath } from '../frame/signs';
import { type KeyEntry, SIGN_ROOM } from './clouds';
import { layOutScatter, type ScatterData, type ScatterLayout, type ScatterPanel } from './layout';
import { scatterReadings, scatterSentences, scatterTable } from './words';

/** How every cloud of designs is drawn and read. */
export const scatterDrawing = {
  layOut: layOutScatter,
  Whole: Key,
  Under: Clouds,
  readings: scatterReadings,
  table: scatterTable,
} satisfies Partial<ChartKind<SweepChartProps, ScatterData, ScatterPanel, ScatterLayout>>;

/** Results against a result, one sign for each design. */
export const ScatterChart = chartOf({
  ...scatterDrawing,
  read,
  about: ({ data: { across, ups }, chart }) =>
    aboutChart(
      'A sign for each design:',
      ups.map(({ title }) => title),
      [across.title],
      chart.key.map(({ label }) => label),
    ).replace(': of', ':'),
  sentences: scatterSentences,
});

function read(props: SweepChartProps): ScatterData | string {
  const across = samplesOf(props, props.cell.across);
  const ups = props.cell.up.flatMap((path) => samplesOf(props, path) ?? []);
  const { lines } = props.cell;
  const places = lines === '' ? undefined : placesAlong(props, lines);
  const groups = places && { labels: readLines(props, lines), of: places };
  return across && ups.length > 0
    ? { across, ups, groups }
    : `${[props.cell.across, ...props.cell.up].join(', ')}: no such result. Choose two results of the trial series for the chart.`;
}

function Clouds({ panel }: { panel: ScatterPanel }): JSX.Element {
  return (
    <>
      {panel.clouds.map(({ key, points, sign, style }) => (
        <path
          key={key}
          data-cloud={key}
          d={signsPath(points, sign)}
          fill={style.line}
          fill-opacity={0.35}
          stroke={style.line}
          stroke-width={1}
        />
      ))}
    </>
  );
}

/** Every sign with its name, above the plots. */
function Key({ chart }: { chart: ScatterLayout }): JSX.Element {
  return (
    <>
      {chart.key.map((each) => (
        <KeyName key={each.label} of={each} />
      ))}
    </>
  );
}

/** A sign and what it stands for, above the plots. */
function KeyName({ of: { label, sign, style, left, line } }: { of: KeyEntry }): JSX.Element {
  const middle = line * (LABEL_SIZE + 3) + LABEL_SIZE / 2 + 2;
  return (
    <g>
      <path
        d={signsPath([{ x: left + 4, y: middle }], sign)}
        fill={style.line}
        fill-opacity={0.35}
        stroke={style.line}
      />
      <text x={round(left + SIGN_ROOM)} y={round(middle + LABEL_SIZE * 0.36)} fill={style.text}>
        {label}
      </text>
    </g>
  );
}
