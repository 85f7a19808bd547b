import type { JSX } from 'preact';
import { useId, useRef } from 'preact/hooks';
import { formatNumber, formatQuantity } from '../../../engine/index';
import { ink, LABEL_SIZE, type Point, useWidth } from '../../drawing/index';
import { missingSentence } from '../frame/caption';
import { ChartFigure } from '../frame/chart-figure';
import { curvePath } from '../frame/curve-path';
import type { TableData } from '../frame/figures';
import { Frame } from '../frame/frame';
import { type Grid, readGrid, thinnedSentence } from '../frame/grid';
import { withinSentence } from '../frame/grid-limits';
import { Hatch } from '../frame/hatch';
import { Baseline, halo, Now, round, Words } from '../frame/marks';
import { lineStyle } from '../frame/palette';
import { PLAIN_WIDTH } from '../frame/place-holder';
import type { SweepChartProps } from '../frame/props';
import type { ReadSeries } from '../frame/readings';
import { inSentence } from '../frame/words';
import { type ContourLayout, type DrawnRegion, layOutContour } from './layout';

/** One result over two axes, as lines along which it is the same. */
export function ContourChart(props: SweepChartProps): JSX.Element {
  const [host, measured] = useWidth(props.width ?? PLAIN_WIDTH);
  const grid = readGrid(props);
  return (
    <div ref={host}>
      {typeof grid === 'string' ? <p>{grid}</p> : <Picture of={props} grid={grid} width={props.width ?? measured} />}
    </div>
  );
}

function Picture({ of, grid, width }: { of: SweepChartProps; grid: Grid; width: number }): JSX.Element {
  const hatch = `hatch-${useId()}`;
  const before = useRef<ContourLayout | undefined>(undefined);
  const chart = layOutContour(grid, of, width, before.current);
  before.current = chart;
  const style = lineStyle(0);
  return (
    <ChartFigure
      title={of.cell.title}
      sentences={captionOf(of, grid, chart)}
      width={chart.width}
      height={chart.height}
      start={chart.spots.find((spot) => spot.kind === 'now')?.at}
      series={() => readings(grid, chart)}
      table={() => tableOf(grid, chart)}
    >
      <Hatch id={hatch} />
      <text>
        {chart.head.map((line, k) => (
          <tspan key={line} x={0} y={LABEL_SIZE + 1 + k * (LABEL_SIZE + 3)}>
            {line}
          </tspan>
        ))}
      </text>
      <Frame
        width={chart.width}
        box={chart.box}
        across={{ range: chart.xRange, ticks: chart.xTicks, grid: true }}
        up={{ range: chart.yRange, ticks: chart.yTicks, grid: true }}
        forbidden={[]}
        hatch={hatch}
      />
      {chart.regions.map((region) => (
        <Region key={`${region.of.path} ${region.zone.side}`} region={region} hatch={hatch} />
      ))}
      {chart.gaps.length <= MOST_GAPS &&
        chart.gaps.map(({ x, y }) => (
          <path
            key={`${x} ${y}`}
            data-gap=""
            d={`M${round(x - 2)},${round(y - 2)}l4,4m0,-4l-4,4`}
            stroke={ink('muted')}
            stroke-width={0.9}
          />
        ))}
      {chart.levels.map(({ level, lines }) => (
        <path
          key={level}
          data-level={level}
          d={lines.map(curvePath).join('')}
          fill="none"
          stroke={style.line}
          stroke-width={1.5}
          stroke-linejoin="round"
        />
      ))}
      {chart.regions.map(({ of: on, zone, edge }) => (
        <path
          key={`${on.path} ${zone.side}`}
          data-limit={on.path}
          d={edge.map(curvePath).join('')}
          fill="none"
          stroke={ink('limit')}
          stroke-width={1.6}
        />
      ))}
      {chart.levels.map(
        ({ level, label, text }) =>
          label && (
            <text
              key={level}
              x={round(label.x)}
              y={round(label.y + LABEL_SIZE * 0.36)}
              text-anchor="middle"
              fill={style.text}
              {...halo}
            >
              {text}
            </text>
          ),
      )}
      {chart.regions.map(({ of: on, zone, words }) => words && <Words key={`${on.path} ${zone.side}`} words={words} />)}
      {chart.spots.map((spot) =>
        spot.kind === 'now' ? <Now key={spot.kind} spot={spot} /> : <Baseline key={spot.kind} spot={spot} />,
      )}
      <text x={round(chart.xTitle.x)} y={round(chart.xTitle.y)} text-anchor="middle">
        {grid.family.across.title}
      </text>
    </ChartFigure>
  );
}

/** Crosses for designs without an answer, as long as they don't become a pattern. */
const MOST_GAPS = 400;

const outline = (points: readonly Point[]): string => `M${points.map((p) => `${round(p.x)},${round(p.y)}`).join('L')}Z`;

function Region({ region, hatch }: { region: DrawnRegion; hatch: string }): JSX.Element {
  return <path data-region={region.of.path} d={region.outlines.map(outline).join('')} fill={`url(#${hatch})`} />;
}

const placeText = (grid: Grid, row: number, column: number): string[] => [
  `${grid.family.across.info.title} ${grid.columns[column]!.label}`,
  `${grid.along.info.title} ${grid.rows[row]!.label}`,
];

/** One series for each row of the grid. */
function readings(grid: Grid, { field, box }: ContourLayout): ReadSeries[] {
  const { info } = grid.family.panels[0]!;
  const unit = info.suffix || info.unit;
  return grid.rows.map((_, r) => ({
    name: '',
    plot: box,
    points: grid.columns.flatMap((_c, c) => {
      const value = field.values[r]![c]!;
      if (Number.isNaN(value)) return [];
      const lines = [`${info.title} ${formatNumber(value)}${unit === '' ? '' : ` ${unit}`}`, ...placeText(grid, r, c)];
      return [{ at: { x: field.x[c]!, y: field.y[r]! }, lines }];
    }),
  }));
}

function tableOf(grid: Grid, { field }: ContourLayout): TableData {
  const panel = grid.family.panels[0]!;
  return {
    head: [
      [
        { text: grid.along.title, rows: 2 },
        { text: `${panel.title}, at ${inSentence(grid.family.across.title)}`, columns: grid.columns.length },
      ],
      grid.columns.map((column) => ({ text: formatNumber(column.shown) })),
    ],
    rows: grid.rows.map((row, r) => ({
      head: formatNumber(row.shown),
      cells: grid.columns.map((_, c) => {
        const value = field.values[r]![c]!;
        return Number.isNaN(value) ? '–' : formatNumber(value);
      }),
    })),
  };
}

function captionOf(props: SweepChartProps, grid: Grid, chart: ContourLayout): string[] {
  const panel = grid.family.panels[0]!;
  if (!panel.column) return [`The sweep ${props.cell.sweep} was not asked for ${panel.info.title}.`];
  const sentences = [extremes(grid, chart), withinSentence(props, grid), thinnedSentence(grid, props)];
  for (const { of, zone, words } of chart.regions) {
    if (words || zone.reason === '') continue;
    const limit = formatQuantity(zone.limitSI, of.info.unit, { suffix: of.info.suffix });
    sentences.push(`${of.info.title} ${zone.side === 'below' ? 'at least' : 'at most'} ${limit}: ${zone.reason}.`);
  }
  if (grid.family.held.length > 0) sentences.push(`At ${grid.family.held.join(', ')}.`);
  if (grid.now && !chart.spots.some((spot) => spot.kind === 'now')) {
    sentences.push('The present design lies outside this picture.');
  }
  sentences.push(missingSentence(props.progress));
  return sentences;
}

/** "Line pull runs from 20.1 N (line length 21.5 m, tip weight 0 g) to 31 N (…)." */
function extremes(grid: Grid, { field }: ContourLayout): string {
  const { info } = grid.family.panels[0]!;
  const unit = info.suffix || info.unit;
  const all = field.values
    .flatMap((row, r) => row.map((value, c) => ({ value, r, c })))
    .filter((e) => !Number.isNaN(e.value));
  if (all.length < 2) return '';
  const least = all.reduce((a, b) => (b.value < a.value ? b : a));
  const most = all.reduce((a, b) => (b.value > a.value ? b : a));
  const end = ({ value, r, c }: typeof least): string =>
    `${formatNumber(value)}${unit === '' ? '' : ` ${unit}`} (${placeText(grid, r, c).map(inSentence).join(', ')})`;
  return `${info.title} runs from ${end(least)} to ${end(most)}.`;
}
