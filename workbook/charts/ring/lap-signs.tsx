import type { JSX } from 'preact';
import { arrowHead, ink, LABEL_SIZE, type Point } from '../../drawing/index';
import { halo, round } from '../frame/marks';
import type { RingLayout } from './layout';

/** From the ring to the arrow of flight, and how much of the ring it takes, in radians. */
const OFF = 9;
const SWEEP = 0.34;
/** Angles at which the arrow of flight may stand: clear of the four points, and of the figures of the rings. */
const FLIGHT_AT: readonly number[] = [0.7, 2.3, 3.9];
const WIND_LENGTH = 44;
const HEAD = 12;

const outline = (points: readonly Point[]): string => `M${points.map((p) => `${round(p.x)},${round(p.y)}`).join('L')}Z`;

/** The pilot in the middle, where the wind blows and which way the model flies; without a compass the pilot alone. */
export function LapSigns({ chart }: { chart: RingLayout }): JSX.Element {
  const { centre, compass } = chart;
  return (
    <g data-signs="lap">
      <circle cx={round(centre.x)} cy={round(centre.y)} r={2.5} fill={ink('ink')} />
      <text x={round(centre.x)} y={round(centre.y + LABEL_SIZE + 5)} text-anchor="middle" {...halo}>
        pilot
      </text>
      {compass && (
        <>
          <Wind chart={chart} />
          <Flight chart={chart} />
        </>
      )}
    </g>
  );
}

/** Downwind is up: the wind blows from the lower edge of the picture to the upper. */
function Wind({ chart: { centre, radius } }: { chart: RingLayout }): JSX.Element {
  const x = Math.max(12, centre.x - radius - 40);
  const foot = { x, y: centre.y + radius };
  const tip = { x, y: foot.y - WIND_LENGTH };
  return (
    <g data-sign="wind">
      <line x1={round(x)} x2={round(x)} y1={round(foot.y)} y2={round(tip.y)} stroke={ink('ink')} stroke-width={1.4} />
      <path d={outline(arrowHead(tip, foot, HEAD))} fill={ink('ink')} />
      <text x={round(x)} y={round(foot.y + LABEL_SIZE + 3)} text-anchor="middle">
        wind
      </text>
    </g>
  );
}

/** An arrow along the ring in the direction of flight, away from the least and the greatest value. */
function Flight({ chart: { place, radius, extremes, centre } }: { chart: RingLayout }): JSX.Element {
  const clear = (angle: number): number => {
    const at = place(angle, radius);
    return Math.min(...extremes.map(({ label }) => Math.hypot(label.x - at.x, label.y - at.y)));
  };
  const from = FLIGHT_AT.reduce((a, b) => (clear(b) > clear(a) ? b : a));
  const far = radius + OFF;
  const start = place(from, far);
  const before = place(from + SWEEP - HEAD / far, far);
  const end = place(from + SWEEP, far);
  const words = place(from + SWEEP / 2, far + 8);
  const turn = place(Math.PI / 2, far).x < centre.x ? 0 : 1;
  return (
    <g data-sign="flight">
      <path
        d={`M${round(start.x)},${round(start.y)}A${round(far)},${round(far)} 0 0,${turn} ${round(before.x)},${round(before.y)}`}
        fill="none"
        stroke={ink('ink')}
        stroke-width={1.4}
      />
      <path d={outline(arrowHead(end, before, HEAD))} fill={ink('ink')} />
      <text
        x={round(words.x)}
        y={round(words.y + LABEL_SIZE * 0.36)}
        text-anchor={words.x < centre.x ? 'end' : 'start'}
      >
        flight
      </text>
    </g>
  );
}
