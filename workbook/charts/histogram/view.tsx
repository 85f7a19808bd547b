import { quantileSorted } from 'd3-array';
import type { JSX } from 'preact';
import { useId, useRef } from 'preact/hooks';
import { formatNumber, type SpreadTold } from '../../../engine/index';
import { ink, LABEL_SIZE, useWidth } from '../../drawing/index';
import { limitNotes, missingSentence } from '../frame/caption';
import { ChartFigure } from '../frame/chart-figure';
import type { TableData } from '../frame/figures';
import { Frame } from '../frame/frame';
import { holds } from '../frame/grid-limits';
import { Hatch } from '../frame/hatch';
import { zonesOf } from '../frame/limits';
import { Baseline, halo, Now, round, Words } from '../frame/marks';
import { lineStyle } from '../frame/palette';
import { PLAIN_WIDTH } from '../frame/place-holder';
import type { SweepChartProps } from '../frame/props';
import type { ReadSeries } from '../frame/readings';
import { type SampleColumn, samplesOf } from '../frame/samples';
import { causesSentence, percentilesSentence } from '../frame/spread-words';
import { type DrawnHistogram, type HistogramLayout, layOutHistogram } from './layout';

/** How the designs of a sweep spread over a result. */
export function HistogramChart(props: SweepChartProps): JSX.Element {
  const [host, measured] = useWidth(props.width ?? PLAIN_WIDTH);
  const columns = props.cell.up.flatMap((path) => samplesOf(props, path) ?? []);
  return (
    <div ref={host}>
      {columns.length > 0 ? (
        <Picture of={props} columns={columns} width={props.width ?? measured} />
      ) : (
        <p>{props.cell.up.join(', ')}: no such result. Choose a result of the sweep for the chart.</p>
      )}
    </div>
  );
}

function Picture({ of, columns, width }: { of: SweepChartProps; columns: readonly SampleColumn[]; width: number }) {
  const hatch = `hatch-${useId()}`;
  const before = useRef<HistogramLayout | undefined>(undefined);
  const chart = layOutHistogram(columns, of, width, before.current);
  before.current = chart;
  return (
    <ChartFigure
      title={of.cell.title}
      sentences={captionOf(of, columns, chart)}
      width={chart.width}
      height={chart.height}
      series={() => readings(chart)}
      table={() => tableOf(chart)}
    >
      <Hatch id={hatch} />
      {chart.panels.map((panel) => (
        <Frame
          key={panel.column.path}
          width={chart.width}
          box={panel.box}
          across={{ range: panel.xRange, ticks: panel.xTicks }}
          up={{ range: panel.yRange, ticks: panel.yTicks, grid: true }}
          forbidden={panel.zones.map(({ zone }) => ({
            across: [zone.limit, panel.xRange[zone.side === 'below' ? 0 : 1]],
            limitAcross: zone.limit,
          }))}
          hatch={hatch}
        />
      ))}
      {chart.panels.map((panel) => (
        <Bins key={panel.column.path} panel={panel} />
      ))}
    </ChartFigure>
  );
}

function Bins({ panel }: { panel: DrawnHistogram }): JSX.Element {
  const { line } = lineStyle(0);
  return (
    <g data-panel={panel.column.path}>
      <text>
        {panel.titleLines.map((words, k) => (
          <tspan key={words} x={0} y={panel.titleTop + LABEL_SIZE + 1 + k * (LABEL_SIZE + 3)}>
            {words}
          </tspan>
        ))}
      </text>
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
      {panel.zones.map(({ zone, words }) => words && <Words key={`${zone.side} ${zone.limit}`} words={words} />)}
      {panel.spots.map((spot) =>
        spot.kind === 'now' ? <Now key={spot.kind} spot={spot} /> : <Baseline key={spot.kind} spot={spot} />,
      )}
    </g>
  );
}

const unitOf = ({ info }: SampleColumn): string => info.suffix || info.unit;
const withUnit = (column: SampleColumn, value: number): string =>
  `${formatNumber(value)}${unitOf(column) === '' ? '' : ` ${unitOf(column)}`}`;
const counted = (count: number): string => `${count} ${count === 1 ? 'design' : 'designs'}`;

const readings = (chart: HistogramLayout): ReadSeries[] =>
  chart.panels.map(({ column, bins, box }) => ({
    name: column.info.title,
    plot: box,
    points: bins.map(({ from, to, count, bar }) => ({
      at: { x: (bar.left + bar.right) / 2, y: bar.top },
      lines: [`${formatNumber(from)} to ${withUnit(column, to)}`, counted(count)],
    })),
  }));

const tableOf = (chart: HistogramLayout): TableData => ({
  head: [[{ text: 'From' }, { text: 'To' }, { text: 'Designs' }]],
  rows: chart.panels.flatMap(({ column, bins }) =>
    bins.map(({ from, to, count }) => ({
      head: `${column.info.title} ${withUnit(column, from)}`,
      cells: [withUnit(column, to), String(count)],
    })),
  ),
});

function captionOf(props: SweepChartProps, columns: readonly SampleColumn[], chart: HistogramLayout): string[] {
  const sentences = columns.flatMap((column) => [
    column.unasked
      ? `The sweep ${props.cell.sweep} was not asked for ${column.info.title}.`
      : spreadSentence(column, props.progress.spread),
    keptSentence(props, column),
  ]);
  sentences.push(...limitNotes(chart.panels));
  for (const panel of chart.panels) {
    if (Number.isFinite(panel.column.now) && panel.spots.every((spot) => spot.kind !== 'now')) {
      sentences.push('The present design lies outside this picture.');
    }
  }
  const { spread, columns: shown } = props.progress;
  const drawn = shown[0]?.length ?? 0;
  if (spread && drawn < spread.designs) sentences.push(`The first ${drawn} of ${spread.designs} designs are drawn.`);
  sentences.push(spread ? causesSentence(spread) : missingSentence(props.progress));
  return sentences;
}

/** "Half of 75 designs have a line pull between 24.1 N and 28.7 N, the middle one 26 N." */
function spreadSentence(column: SampleColumn, told: SpreadTold | undefined): string {
  const result = told?.results.find((each) => each.path === column.path);
  if (told && result) return percentilesSentence(told, result, column.info);
  const ordered = column.values.filter(Number.isFinite).sort((a, b) => a - b);
  if (ordered.length < 2) return '';
  const [low, middle, high] = [0.25, 0.5, 0.75].map((share) => withUnit(column, quantileSorted(ordered, share)!));
  return `${column.info.title}: half of ${ordered.length} designs lie between ${low} and ${high}, as many below ${middle} as above.`;
}

function keptSentence(props: SweepChartProps, column: SampleColumn): string {
  const limits = zonesOf(column, props.checks, props.names, props.values);
  const answered = column.values.filter(Number.isFinite);
  if (limits.length === 0 || answered.length === 0) return '';
  const kept = answered.filter((value) => limits.every((zone) => holds(value, zone))).length;
  return `${kept} of them keep within ${limits.length === 1 ? 'the limit' : 'the limits'}.`;
}
