import type { JSX } from 'preact';
import { useId, useRef } from 'preact/hooks';
import { formatNumber } from '../../../engine/index';
import { LABEL_SIZE, useWidth } from '../../drawing/index';
import { limitNotes, missingSentence } from '../frame/caption';
import { ChartFigure } from '../frame/chart-figure';
import { MOST_ROWS, type TableData } from '../frame/figures';
import { Frame } from '../frame/frame';
import { holds } from '../frame/grid-limits';
import { Hatch } from '../frame/hatch';
import { zonesOf } from '../frame/limits';
import { Baseline, Now, round, Words } from '../frame/marks';
import { PLAIN_WIDTH } from '../frame/place-holder';
import type { SweepChartProps } from '../frame/props';
import type { ReadSeries } from '../frame/readings';
import { designText, type SampleColumn, samplesOf } from '../frame/samples';
import { signsPath } from '../frame/signs';
import { causesSentence } from '../frame/spread-words';
import { inSentence } from '../frame/words';
import { type DrawnScatter, type KeyEntry, layOutScatter, MOST_DRAWN, type ScatterLayout, SIGN_ROOM } from './layout';

/** Results against a result, one sign for each design. */
export function ScatterChart(props: SweepChartProps): JSX.Element {
  const [host, measured] = useWidth(props.width ?? PLAIN_WIDTH);
  const across = samplesOf(props, props.cell.across);
  const ups = props.cell.up.flatMap((path) => samplesOf(props, path) ?? []);
  return (
    <div ref={host}>
      {across && ups.length > 0 ? (
        <Picture of={props} across={across} ups={ups} width={props.width ?? measured} />
      ) : (
        <p>
          {[props.cell.across, ...props.cell.up].join(', ')}: no such result. Choose two results of the sweep for the
          chart.
        </p>
      )}
    </div>
  );
}

interface PictureProps {
  readonly of: SweepChartProps;
  readonly across: SampleColumn;
  readonly ups: readonly SampleColumn[];
  readonly width: number;
}

function Picture({ of, across, ups, width }: PictureProps): JSX.Element {
  const hatch = `hatch-${useId()}`;
  const before = useRef<ScatterLayout | undefined>(undefined);
  const chart = layOutScatter(across, ups, of, width, before.current);
  before.current = chart;
  return (
    <ChartFigure
      title={of.cell.title}
      sentences={captionOf(of, across, ups, chart)}
      width={chart.width}
      height={chart.height}
      start={chart.panels.flatMap((panel) => panel.spots).find((spot) => spot.kind === 'now')?.at}
      series={() => readings(of, across, chart)}
      table={() => tableOf(of, [across, ...ups])}
    >
      <Hatch id={hatch} />
      {chart.panels.map((panel, k) => (
        <Frame
          key={panel.column.path}
          width={chart.width}
          box={panel.box}
          across={{ range: chart.xRange, ticks: k === chart.panels.length - 1 ? chart.xTicks : undefined, grid: true }}
          up={{ range: panel.range, ticks: panel.ticks, grid: true }}
          forbidden={panel.zones.map(({ zone, along }) =>
            along === 'up'
              ? { up: [zone.limit, panel.range[zone.side === 'below' ? 0 : 1]], limitUp: zone.limit }
              : { across: [zone.limit, chart.xRange[zone.side === 'below' ? 0 : 1]], limitAcross: zone.limit },
          )}
          hatch={hatch}
        />
      ))}
      {chart.key.map((each) => (
        <KeyName key={each.label} of={each} />
      ))}
      {chart.panels.map((panel) => (
        <Clouds key={panel.column.path} panel={panel} />
      ))}
      <text x={round(chart.xTitle.at.x)} y={round(chart.xTitle.at.y)} text-anchor="middle">
        {chart.xTitle.text}
      </text>
    </ChartFigure>
  );
}

function Clouds({ panel }: { panel: DrawnScatter }): JSX.Element {
  return (
    <g data-panel={panel.column.path}>
      <text>
        {panel.titleLines.map((line, k) => (
          <tspan key={line} x={0} y={panel.titleTop + LABEL_SIZE + 1 + k * (LABEL_SIZE + 3)}>
            {line}
          </tspan>
        ))}
      </text>
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
      {panel.zones.map(
        ({ of, zone, words }) => words && <Words key={`${of.path} ${zone.side} ${zone.limit}`} words={words} />,
      )}
      {panel.spots.map((spot) =>
        spot.kind === 'now' ? <Now key={spot.kind} spot={spot} /> : <Baseline key={spot.kind} spot={spot} />,
      )}
    </g>
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

const withUnit = ({ info }: SampleColumn, value: number): string => {
  const unit = info.suffix || info.unit;
  return `${info.title} ${formatNumber(value)}${unit === '' ? '' : ` ${unit}`}`;
};

/** The designs of each cloud from left to right. */
const readings = (of: SweepChartProps, across: SampleColumn, chart: ScatterLayout): ReadSeries[] =>
  chart.panels.flatMap(({ clouds, column, box }) =>
    clouds.map(
      ({ points }): ReadSeries => ({
        name: '',
        plot: box,
        points: [...points]
          .sort((a, b) => a.x - b.x)
          .map(({ x, y, sample }) => ({
            at: { x, y },
            lines: [
              withUnit(across, across.values[sample]!),
              withUnit(column, column.values[sample]!),
              ...designText(of, sample),
            ],
          })),
      }),
    ),
  );

const tableOf = (of: SweepChartProps, columns: readonly SampleColumn[]): TableData => ({
  head: [[{ text: 'Design' }, ...columns.map((column) => ({ text: column.title }))]],
  total: of.progress.total,
  rows: Array.from({ length: Math.min(MOST_ROWS, of.progress.total) }, (_, sample) => ({
    head: designText(of, sample).join(', '),
    cells: columns.map(({ values }) => {
      const value = values[sample] ?? Number.NaN;
      return Number.isNaN(value) ? '–' : formatNumber(value);
    }),
  })),
});

function captionOf(
  props: SweepChartProps,
  across: SampleColumn,
  ups: readonly SampleColumn[],
  chart: ScatterLayout,
): string[] {
  const sentences: string[] = [];
  const drawn = chart.panels[0]!.clouds.reduce((sum, { points }) => sum + points.length, 0);
  const answered = across.values.filter(Number.isFinite).length;
  for (const column of [across, ...ups]) {
    if (column.unasked) sentences.push(`The sweep ${props.cell.sweep} was not asked for ${column.info.title}.`);
  }
  sentences.push(...ups.map((up) => togetherSentence(across, up)), keptSentence(props, [across, ...ups]));
  if (drawn < answered && answered > MOST_DRAWN) sentences.push(`${drawn} of ${answered} designs are drawn.`);
  sentences.push(...chart.panels.flatMap((panel) => limitNotes(panel.outside)));
  const words = chart.panels.flatMap((panel) => panel.zones).filter(({ words, zone }) => !words && zone.reason !== '');
  const noted = new Map(
    words.map(({ of, zone }) => [`${of.path} ${zone.side}`, { zones: [{ zone, words: undefined }], outside: [] }]),
  );
  const { spread } = props.progress;
  sentences.push(...limitNotes([...noted.values()]), spread ? causesSentence(spread) : missingSentence(props.progress));
  return sentences;
}

/** Correlation from which two results are said to go together. */
const TOGETHER = 0.7;
/** Below this no direction shows in the cloud. */
const TENDENCY = 0.3;

/** "Where line pull is greater, lap time is mostly less." */
export function togetherSentence(across: SampleColumn, up: SampleColumn): string {
  const pairs = across.values.flatMap((x, k) => (Number.isFinite(x + up.values[k]!) ? [{ x, y: up.values[k]! }] : []));
  if (pairs.length < 3) return '';
  const mx = pairs.reduce((sum, { x }) => sum + x, 0) / pairs.length;
  const my = pairs.reduce((sum, { y }) => sum + y, 0) / pairs.length;
  let [xx, yy, xy] = [0, 0, 0];
  for (const { x, y } of pairs) {
    xx += (x - mx) ** 2;
    yy += (y - my) ** 2;
    xy += (x - mx) * (y - my);
  }
  const r = xy / Math.sqrt(xx * yy);
  const [a, b] = [inSentence(across.info.title), inSentence(up.info.title)];
  if (!Number.isFinite(r) || Math.abs(r) < TENDENCY) return `Over these designs ${a} and ${b} do not go together.`;
  const way = r > 0 ? 'greater' : 'less';
  if (Math.abs(r) < TOGETHER) return `Where ${a} is greater, ${b} is ${way} by tendency only.`;
  return `Where ${a} is greater, ${b} is mostly ${way}.`;
}

function keptSentence(props: SweepChartProps, columns: readonly SampleColumn[]): string {
  const limits = columns.flatMap((column) =>
    zonesOf(column, props.checks, props.names, props.values).map((zone) => ({ column, zone })),
  );
  if (limits.length === 0) return '';
  const answered = Array.from({ length: props.progress.total }, (_, k) => k).filter((k) =>
    limits.every(({ column }) => Number.isFinite(column.values[k])),
  );
  const kept = answered.filter((k) => limits.every(({ column, zone }) => holds(column.values[k]!, zone))).length;
  return `${kept} of ${answered.length} designs keep within the ${limits.length === 1 ? 'limit' : 'limits'}.`;
}
