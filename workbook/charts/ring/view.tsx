import type { JSX } from 'preact';
import { formatNumber } from '../../../engine/index';
import { ink, LABEL_SIZE, lineKinds } from '../../drawing/index';
import { aboutChart } from '../frame/about';
import { Curve, GhostCurve } from '../frame/curve';
import { chartOf, type Drawn } from '../frame/kind';
import type { Zone } from '../frame/limits';
import { halo, round, VariantSign } from '../frame/marks';
import { titleWithUnit } from '../frame/measure';
import { lineStyle } from '../frame/palette';
import { TitleWords } from '../frame/panel-view';
import { TITLE_LINE } from '../frame/panels';
import type { TraceChartProps } from '../frame/props';
import { bearingText } from './compass';
import { LapSigns } from './lap-signs';
import { layOutRing, type RingData, type RingExtreme, type RingLayout, type RingPoint, readRing } from './layout';
import { ringReadings, ringSentences, ringTable } from './words';

/** A value around the lap, seen from above. */
export const RingChart = chartOf({
  read: readRing,
  layOut: layOutRing,
  Whole: Ring,
  about: ({ of, data: { column } }) => aboutChart('Ring', [titleWithUnit(column)], [of.trace.columns[0]!.title]),
  sentences: ringSentences,
  readings: ringReadings,
  table: ringTable,
  start: ({ extremes }) => extremes.find((each) => each.kind === 'least')?.point.at,
});

const TURN = 2 * Math.PI;
/** Along this angle stand the figures of the rings. */
const FIGURES_AT = -Math.PI / 4;
const SPOKES: readonly number[] = [0, 0.25, 0.5, 0.75];

type Drawing = Drawn<TraceChartProps, RingData, RingLayout>;

function Ring({ data: { column }, chart, hatch }: Drawing & { hatch: string }): JSX.Element {
  const { centre } = chart;
  return (
    <>
      <TitleWords of={chart.title} />
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
      {SPOKES.map((turn) => (
        <Spoke key={turn} turn={turn} chart={chart} />
      ))}
      {chart.others.map(({ order, points }) => (
        <GhostCurve key={order} points={closed(points)} variant={order} />
      ))}
      {chart.baseline.length > 0 && <GhostCurve points={closed(chart.baseline)} />}
      <Curve points={closed(chart.present)} style={lineStyle(0)} />
      {chart.ticks.values.map((value) => {
        const at = chart.place(FIGURES_AT, chart.r(value));
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
      {chart.others.map(({ order, points }) => (
        <VariantSign key={order} at={greatestOf(points).at} order={order} />
      ))}
      <LapSigns chart={chart} />
      {chart.extremes.map((each) => (
        <Extreme key={each.kind} of={each} unit={column.suffix || column.unit} />
      ))}
    </>
  );
}

/** One of the four points of the ring: its angle and, where it is known, how it lies to wind and compass. */
function Spoke({ turn, chart }: { turn: number; chart: RingLayout }): JSX.Element {
  const { centre, radius, compass } = chart;
  const end = chart.place(turn * TURN, radius + 4);
  const words = chart.place(turn * TURN, radius + 14);
  const level = Math.abs(end.x - centre.x) > 1;
  const anchor = !level ? 'middle' : end.x < centre.x ? 'end' : 'start';
  const wind = turn === 0 ? 'downwind' : turn === 0.5 ? 'upwind' : '';
  const bearing = compass && `bearing ${bearingText(compass.bearing(turn * TURN))}`;
  const lines = level
    ? [`${Math.round(turn * 360)}°`, ...(bearing ? bearing.split(' ') : [])]
    : [[`${Math.round(turn * 360)}°`, ...(compass ? [wind] : []), ...(bearing ? [bearing] : [])].join(', ')];
  return (
    <g>
      <line x1={round(centre.x)} y1={round(centre.y)} x2={round(end.x)} y2={round(end.y)} stroke={ink('hairline')} />
      <text text-anchor={anchor} fill={ink('muted')}>
        {lines.map((line, k) => (
          <tspan key={line} x={round(words.x)} y={round(words.y + LABEL_SIZE * 0.36 + k * TITLE_LINE)}>
            {line}
          </tspan>
        ))}
      </text>
    </g>
  );
}

/** The first point again at the end, where the trace does not come round by itself. */
/** Where the sign of a variant stands. */
const greatestOf = (points: readonly RingPoint[]): RingPoint => points.reduce((a, b) => (b.value > a.value ? b : a));

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
