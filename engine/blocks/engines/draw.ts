import type { Shape } from '../block';
import { finiteShapes } from '../finite-shapes';

/** Engine on its bearers with its propeller, m and rad in layout axes. */
export interface EngineOnBearers {
  readonly station: number;
  readonly outboard: number;
  readonly height: number;
  readonly sideThrust: number;
  readonly downThrust: number;
  readonly length: number;
  readonly width: number;
  readonly bearerFront: number;
  readonly bearerRear: number;
  readonly propellerDiameter: number;
  /** Path whose value labels the mark at the station. */
  readonly label: string;
}

/** Thickness of a bearer beside and below the engine as share of its width. */
const BEARER_SHARE = 0.3;

export function drawEngine(e: EngineOnBearers): Shape[] {
  const plan = place(e.station, e.outboard, e.sideThrust);
  const side = place(e.station, e.height, -e.downThrust);
  const [back, front, half] = [e.length / 2, -e.length / 2, e.width / 2];
  const reach = e.propellerDiameter / 2;
  const bearer = e.width * BEARER_SHARE;
  return finiteShapes([
    ...[-1, 1].map(
      (sign): Shape => ({
        view: 'plan',
        part: 'bearers',
        closed: true,
        points: box(
          e.bearerFront,
          e.bearerRear,
          e.outboard + sign * half * 0.6,
          e.outboard + sign * (half * 0.6 + bearer),
        ),
      }),
    ),
    {
      view: 'side',
      part: 'bearers',
      closed: true,
      points: box(e.bearerFront, e.bearerRear, e.height - bearer, e.height),
    },
    { view: 'plan', part: 'engine', closed: true, points: plan([front, -half, back, -half, back, half, front, half]) },
    { view: 'side', part: 'engine', closed: true, points: side([front, -half, back, -half, back, half, front, half]) },
    { view: 'plan', part: 'propeller', points: plan([front, -reach, front, reach]) },
    { view: 'side', part: 'propeller', points: side([front, -reach, front, reach]) },
    { view: 'plan', part: 'engine_station', points: [e.station, e.outboard], label: e.label },
  ]);
}

const box = (x0: number, x1: number, y0: number, y1: number): number[] => [x0, y0, x1, y0, x1, y1, x0, y1];

/** Turns points about the engine so that its front moves by +angle across, and shifts them to its place. */
function place(x: number, across: number, angle: number): (points: readonly number[]) => number[] {
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  return (points) => {
    const out: number[] = [];
    for (let k = 0; k < points.length; k += 2) {
      const along = points[k]!;
      const aside = points[k + 1]!;
      out.push(x + along * c + aside * s, across - along * s + aside * c);
    }
    return out;
  };
}
