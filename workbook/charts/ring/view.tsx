import type { JSX } from 'preact';
import { useId, useRef } from 'preact/hooks';
import { formatNumber, fromSI } from '../../../engine/index';
import { ink, LABEL_SIZE, lineKinds, useWidth } from '../../drawing/index';
import { ChartFigure } from '../frame/chart-figure';
import { Curve, GhostCurve } from '../frame/curve';
import type { TableData } from '../frame/figures';
import { Hatch } from '../frame/hatch';
import type { Zone } from '../frame/limits';
import { halo, round } from '../frame/marks';
import { lineStyle } from '../frame/palette';
import { PLAIN_WIDTH } from '../frame/place-holder';
import type { TraceChartProps } from '../frame/props';
import type { ReadSeries } from '../frame/readings';
import { limitsOfColumn } from '../frame/trace-limits';
import { inSentence } from '../frame/words';
import { layOutRing, type RingExtreme, type RingLayout, type RingPoint, ringColumn, titleOf } from './layout';

/** A value around the lap, seen from above. */
export function RingChart(props: TraceChartProps): JSX.Element {
  const [host, measured] = useWidth(props.width ?? PLAIN_WIDTH);
  const { trace, cell } = props;
  return (
    <div ref={host}>
      {!ringColumn(props) ? (
        <p>{trace.message ?? `${cell.of} does not tell "${cell.up[0] ?? ''}". Choose another.`}</p>
      ) : trace.present.length === 0 ? (
        <p>{trace.message ?? `${trace.title} has nothing to show for this design.`}</p>
      ) : (
        <Picture of={props} width={props.width ?? measured} />
      )}
    </div>
  );
}

const TURN = 2 * Math.PI;
const SPOKES: readonly number[] = [0, 0.25, 0.5, 0.75];

function Picture({ of, width }: { of: TraceChartProps; width: number }): JSX.Element {
  const hatch = `hatch-${useId()}`;
  const before = useRef<RingLayout | undefined>(undefined);
  const chart = layOutRing(of, limitsOfColumn(ringColumn(of)!.column, of), width, before.current);
  before.current = chart;
  const { centre, radius } = chart;
  const { column } = ringColumn(of)!;
  return (
    <ChartFigure
      title={of.cell.title}
      sentences={captionOf(of, chart)}
      width={chart.width}
      height={chart.height}
      start={chart.extremes.find((each) => each.kind === 'least')?.point.at}
      series={() => readings(of, chart)}
      table={() => tableOf(of)}
    >
      <Hatch id={hatch} />
      <text>
        {chart.titleLines.map((line, k) => (
          <tspan key={line} x={0} y={LABEL_SIZE + 1 + k * (LABEL_SIZE + 3)}>
            {line}
          </tspan>
        ))}
      </text>
      {chart.zones.map((zone) => (
        <Forbidden key={`${zone.side} ${zone.limit}`} zone={zone} chart={chart} hatch={hatch} />
      ))}
      {chart.ticks.values.map(
        (value) =>
          chart.r(value) > 1 && (
            <circle
              key={value}
              cx={round(centre.x)}
              cy={round(centre.y)}
              r={round(chart.r(value))}
              fill="none"
              stroke={ink('rule')}
              stroke-width={0.8}
            />
          ),
      )}
      {SPOKES.map((turn) => {
        const end = chart.place(turn * TURN, radius + 4);
        const words = chart.place(turn * TURN, radius + 14);
        return (
          <g key={turn}>
            <line
              x1={round(centre.x)}
              y1={round(centre.y)}
              x2={round(end.x)}
              y2={round(end.y)}
              stroke={ink('hairline')}
            />
            <text
              x={round(words.x)}
              y={round(words.y + LABEL_SIZE * 0.36)}
              text-anchor={turn === 0.25 ? 'end' : turn === 0.75 ? 'start' : 'middle'}
              fill={ink('muted')}
            >
              {Math.round(turn * 360)}°
            </text>
          </g>
        );
      })}
      {chart.baseline.length > 0 && <GhostCurve points={closed(chart.baseline)} />}
      <Curve points={closed(chart.present)} style={lineStyle(0)} />
      {chart.ticks.values.map((value) => {
        const at = chart.place((-45 / 360) * TURN, chart.r(value));
        return (
          chart.r(value) > 1 && (
            <text
              key={value}
              x={round(at.x)}
              y={round(at.y + LABEL_SIZE * 0.36)}
              text-anchor="middle"
              fill={ink('muted')}
              {...halo}
            >
              {chart.ticks.text(value)}
            </text>
          )
        );
      })}
      {chart.extremes.map((each) => (
        <Extreme key={each.kind} of={each} unit={column.suffix || column.unit} />
      ))}
    </ChartFigure>
  );
}

/** The first point again at the end, where the trace does not come round by itself. */
const closed = (points: readonly RingPoint[]) =>
  points.length > 2 ? [...points.map(({ at }) => at), points[0]!.at] : points.map(({ at }) => at);

function Forbidden({ zone, chart, hatch }: { zone: Zone; chart: RingLayout; hatch: string }): JSX.Element {
  const { centre, radius } = chart;
  const r = Math.max(0, chart.r(zone.limit));
  const circle = (far: number): string =>
    `M${round(centre.x - far)},${round(centre.y)}a${round(far)},${round(far)} 0 1,0 ${round(2 * far)},0a${round(far)},${round(far)} 0 1,0 ${round(-2 * far)},0Z`;
  return (
    <g>
      <path
        d={zone.side === 'below' ? circle(r) : circle(radius) + circle(r)}
        fill={`url(#${hatch})`}
        fill-rule="evenodd"
      />
      <circle
        cx={round(centre.x)}
        cy={round(centre.y)}
        r={round(r)}
        fill="none"
        stroke={ink('limit')}
        stroke-width={1}
      />
    </g>
  );
}

function Extreme({ of, unit }: { of: RingExtreme; unit: string }): JSX.Element {
  const { point, label, anchor, kind } = of;
  return (
    <g data-extreme={kind}>
      <line
        x1={round(point.at.x)}
        y1={round(point.at.y)}
        x2={round(label.x)}
        y2={round(label.y)}
        stroke={ink('muted')}
        stroke-width={lineKinds.thin.width}
      />
      <circle
        cx={round(point.at.x)}
        cy={round(point.at.y)}
        r={4}
        fill={ink('paper')}
        stroke={ink('ink')}
        stroke-width={1.4}
      />
      <text text-anchor={anchor} {...halo}>
        <tspan x={round(label.x)} y={round(label.y - 2)}>
          {kind}
        </tspan>
        <tspan x={round(label.x)} y={round(label.y + LABEL_SIZE)} font-weight={700}>
          {formatNumber(point.value)}
          {unit === '' ? '' : ` ${unit}`}
        </tspan>
      </text>
    </g>
  );
}

const degrees = (angle: number): string => `${formatNumber((angle * 360) / TURN)}°`;

function readings(of: TraceChartProps, chart: RingLayout): ReadSeries[] {
  const { column } = ringColumn(of)!;
  const unit = column.suffix || column.unit;
  const series = (name: string, points: readonly RingPoint[]): ReadSeries => ({
    name,
    points: points.map(({ at, angle, value }) => ({
      at,
      lines: [
        `${column.title} ${formatNumber(value)}${unit === '' ? '' : ` ${unit}`}`,
        `${of.trace.columns[0]!.title} ${degrees(angle)}`,
      ],
    })),
  });
  return chart.baseline.length === 0
    ? [series('', chart.present)]
    : [series('now', chart.present), series('baseline', chart.baseline)];
}

function tableOf({ trace, ...rest }: TraceChartProps): TableData {
  const { column, index } = ringColumn({ trace, ...rest })!;
  const shown = (arrays: typeof trace.present | undefined, k: number): string => {
    const si = arrays?.[index]?.[k] ?? Number.NaN;
    return Number.isFinite(si) ? formatNumber(fromSI(si, column.unit)) : '–';
  };
  const twice = trace.baseline !== undefined;
  return {
    head: [[{ text: trace.columns[0]!.title }, { text: titleOf(column) }, ...(twice ? [{ text: 'Baseline' }] : [])]],
    rows: Array.from(trace.present[0] ?? [], (angle, k) => ({
      head: degrees(angle),
      cells: [shown(trace.present, k), ...(twice ? [shown(trace.baseline, k)] : [])],
    })),
  };
}

function captionOf(props: TraceChartProps, chart: RingLayout): string[] {
  const { column } = ringColumn(props)!;
  const unit = column.suffix || column.unit;
  const said = (value: number): string => `${formatNumber(value)}${unit === '' ? '' : ` ${unit}`}`;
  const at = (kind: RingExtreme['kind']) => chart.extremes.find((each) => each.kind === kind)?.point;
  const [least, greatest] = [at('least'), at('greatest')];
  const sentences = [
    least && greatest
      ? `Least ${inSentence(column.title)} ${said(least.value)} at ${degrees(least.angle)}, greatest ${said(greatest.value)} at ${degrees(greatest.angle)}.`
      : chart.present[0]
        ? `${column.title} is ${said(chart.present[0].value)} all round.`
        : '',
    `Seen from above. ${props.trace.columns[0]!.title} runs anticlockwise from the top.`,
  ];
  for (const zone of chart.zones) {
    const side = zone.side === 'below' ? 'at least' : 'at most';
    sentences.push(`${column.title} ${side} ${said(zone.limit)}${zone.reason === '' ? '' : `: ${zone.reason}`}.`);
  }
  if (chart.baseline.length > 0) {
    const values = chart.baseline.map(({ value }) => value);
    sentences.push(`Dotted: baseline, ${formatNumber(Math.min(...values))} to ${said(Math.max(...values))}.`);
  }
  if (chart.missing > 0) {
    const total = chart.missing + chart.present.length;
    sentences.push(`${chart.missing} of ${total} points have no answer and are left out.`);
  }
  return sentences;
}
