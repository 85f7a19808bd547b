import type { JSX } from 'preact';
import { useId, useRef } from 'preact/hooks';
import { formatNumber } from '../../../engine/index';
import { LABEL_SIZE, useWidth } from '../../drawing/index';
import { limitNotes, missingSentence, slopeSentence, spanSentence } from '../frame/caption';
import { ChartFigure } from '../frame/chart-figure';
import { Curve, GhostCurve } from '../frame/curve';
import { Frame } from '../frame/frame';
import { type Grid, readGrid, thinnedSentence } from '../frame/grid';
import { withinSentence } from '../frame/grid-limits';
import { Hatch } from '../frame/hatch';
import { Baseline, halo, Now, round, Words } from '../frame/marks';
import { type LineStyle, lineStyle } from '../frame/palette';
import { PLAIN_WIDTH } from '../frame/place-holder';
import type { SweepChartProps } from '../frame/props';
import type { ReadSeries } from '../frame/readings';
import { inSentence } from '../frame/words';
import { lineTable } from '../line/readings';
import { type CarpetLayout, type CarpetLine, type DrawnCarpet, layOutCarpet } from './layout';

const STYLE: Readonly<Record<CarpetLine['family'], LineStyle>> = { across: lineStyle(1), along: lineStyle(0) };
const LINE = LABEL_SIZE + 3;
const SAMPLE = 26;

/** Results over two axes as carpets: every crossing is one design, its height on the scale. */
export function CarpetChart(props: SweepChartProps): JSX.Element {
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
  const before = useRef<CarpetLayout | undefined>(undefined);
  const chart = layOutCarpet(grid, of, width, before.current);
  before.current = chart;
  return (
    <ChartFigure
      title={of.cell.title}
      sentences={captionOf(of, grid, chart)}
      width={chart.width}
      height={chart.height}
      start={chart.panels.flatMap((panel) => panel.spots).find((spot) => spot.kind === 'now')?.at}
      series={() => readings(grid, chart)}
      table={() => lineTable(grid.family, of)}
    >
      <Hatch id={hatch} />
      <Key family="along" title={grid.along.title} row={0} />
      <Key family="across" title={grid.family.across.title} row={1} />
      {chart.panels.map((panel) => (
        <Frame
          key={panel.panel.path}
          width={chart.width}
          box={panel.box}
          across={{ range: [0, 1] }}
          up={{ range: panel.range, ticks: panel.ticks, grid: true }}
          forbidden={panel.zones.map(({ zone }) => ({
            up: [zone.limit, panel.range[zone.side === 'below' ? 0 : 1]],
            limitUp: zone.limit,
          }))}
          hatch={hatch}
        />
      ))}
      {chart.panels.map((panel) => (
        <Carpet key={panel.panel.path} of={panel} />
      ))}
    </ChartFigure>
  );
}

/** A piece of line with the axis that stays the same along it. */
function Key({ family, title, row }: { family: CarpetLine['family']; title: string; row: number }): JSX.Element {
  const y = row * LINE + LABEL_SIZE / 2 + 2;
  return (
    <g>
      <Curve
        points={[
          { x: 0, y },
          { x: SAMPLE, y },
        ]}
        style={STYLE[family]}
      />
      <text x={SAMPLE + 6} y={round(y + LABEL_SIZE * 0.36)} fill={STYLE[family].text}>
        equal {inSentence(title)}
      </text>
    </g>
  );
}

function Carpet({ of }: { of: DrawnCarpet }): JSX.Element {
  return (
    <g data-panel={of.panel.path}>
      <text>
        {of.titleLines.map((line, k) => (
          <tspan key={line} x={0} y={of.titleTop + LABEL_SIZE + 1 + k * LINE}>
            {line}
          </tspan>
        ))}
      </text>
      {of.ghost.length > 0 && <GhostCurve points={of.ghost} />}
      {of.lines.map((line) => (
        <Curve key={line.key} points={line.points} style={STYLE[line.family]} />
      ))}
      {of.zones.map(({ zone, words }) => words && <Words key={`${zone.side} ${zone.limit}`} words={words} />)}
      {of.lines.map(
        ({ key, label, text, family }) =>
          label && (
            <text
              key={key}
              x={round(label.left + 2)}
              y={round(label.top + LABEL_SIZE)}
              fill={STYLE[family].text}
              {...halo}
            >
              {text}
            </text>
          ),
      )}
      {of.spots.map((spot) =>
        spot.kind === 'now' ? <Now key={spot.kind} spot={spot} /> : <Baseline key={spot.kind} spot={spot} />,
      )}
    </g>
  );
}

/** One series for each row of the grid, panel by panel. */
const readings = (grid: Grid, chart: CarpetLayout): ReadSeries[] =>
  chart.panels.flatMap(({ panel, placed, values, box }) => {
    const unit = panel.info.suffix || panel.info.unit;
    return grid.rows.map(
      (row, r): ReadSeries => ({
        name: '',
        plot: box,
        upOnly: true,
        points: grid.columns.flatMap((column, c) => {
          const value = values[r]![c]!;
          if (Number.isNaN(value)) return [];
          return [
            {
              at: placed[r]![c]!,
              lines: [
                `${panel.info.title} ${formatNumber(value)}${unit === '' ? '' : ` ${unit}`}`,
                `${grid.family.across.info.title} ${column.label}`,
                `${grid.along.info.title} ${row.label}`,
              ],
            },
          ];
        }),
      }),
    );
  });

function captionOf(props: SweepChartProps, grid: Grid, chart: CarpetLayout): string[] {
  const { family } = grid;
  const nowX = props.values[props.names.get(props.cell.across)?.slot ?? -1];
  const sentences = [
    'Every crossing is one design; its height is read on the scale at the left.',
    slopeSentence(family, props.progress, nowX) || spanSentence(family, props.progress),
    withinSentence(props, grid),
    thinnedSentence(grid, props),
    ...limitNotes(chart.panels),
  ];
  for (const panel of family.panels) {
    if (!panel.column) sentences.push(`The sweep ${props.cell.sweep} was not asked for ${panel.info.title}.`);
  }
  if (family.held.length > 0) sentences.push(`At ${family.held.join(', ')}.`);
  if (family.panels.some((p) => p.now) && chart.panels.every((p) => p.spots.every((s) => s.kind !== 'now'))) {
    sentences.push('The present design lies outside this picture.');
  }
  sentences.push(missingSentence(props.progress));
  return sentences;
}
