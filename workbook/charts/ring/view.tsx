import type { JSX } from 'preact';
import { formatNumber } from '../../../engine/index';
import { ink, LABEL_SIZE, lineKinds } from '../../drawing/index';
import { Curve, GhostCurve } from '../frame/curve';
import { chartOf, type Drawn } from '../frame/kind';
import type { Zone } from '../frame/limits';
import { halo, round } from '../frame/marks';
import { lineStyle } from '../frame/palette';
import { TitleWords } from '../frame/panel-view';
import type { TraceChartProps } from '../frame/props';
import { layOutRing, type RingData, type RingExtreme, type RingLayout, type RingPoint, readRing } from './layout';
import { ringReadings, ringSentences, ringTable } from './words';

/** A value around the lap, seen from above. */
export const RingChart = chartOf({
  read: readRing,
  layOut: layOutRing,
  Whole: Ring,
  sentences: ringSentences,
  readings: ringReadings,
  table: ringTable,
  start: ({ extremes }) => extremes.find((each) => each.kind === 'least')?.point.at,
});

const TURN = 2 * Math.PI;
const SPOKES: readonly number[] = [0, 0.25, 0.5, 0.75];

type Drawing = Drawn<TraceChartProps, RingData, RingLayout>;

function Ring({ data: { column }, chart, hatch }: Drawing & { hatch: string }): JSX.Element {
  const { centre, radius } = chart;
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
    </>
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
