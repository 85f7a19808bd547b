import type { Shape } from '../block';

export interface TailOutline {
  readonly span: number;
  readonly rootChord: number;
  readonly tipChord: number;
  readonly edge: number;
  readonly sweep: number;
  readonly height: number;
  readonly elevatorShare: number;
}

/** Stabiliser and elevator from above, and as a line from the side; they meet at the hinge. */
export function drawStabiliser(t: TailOutline): Shape[] {
  const half = t.span / 2;
  const tipEdge = t.edge + half * Math.tan(t.sweep);
  const rootHinge = t.edge + t.rootChord * (1 - t.elevatorShare);
  const tipHinge = tipEdge + t.tipChord * (1 - t.elevatorShare);
  const rootEnd = t.edge + t.rootChord;
  const tipEnd = tipEdge + t.tipChord;
  const mirrored = (rootFront: number, tipFront: number, rootBack: number, tipBack: number): number[] => [
    ...[rootFront, 0, tipFront, half, tipBack, half],
    ...[rootBack, 0, tipBack, -half, tipFront, -half],
  ];
  return [
    { view: 'plan', part: 'stabiliser', points: mirrored(t.edge, tipEdge, rootHinge, tipHinge), closed: true },
    { view: 'plan', part: 'elevator', points: mirrored(rootHinge, tipHinge, rootEnd, tipEnd), closed: true },
    { view: 'side', part: 'stabiliser', points: [t.edge, t.height, rootHinge, t.height] },
    { view: 'side', part: 'elevator', points: [rootHinge, t.height, rootEnd, t.height] },
  ];
}

export interface FinOutline {
  readonly height: number;
  readonly rootChord: number;
  readonly tipChord: number;
  readonly edge: number;
  readonly sweep: number;
  readonly base: number;
  readonly rudderShare: number;
  /** rad, trailing edge outboard positive. */
  readonly rudderAngle: number;
}

/** Fin and rudder from the side, and as a line from above with the rudder turned. */
export function drawFin(f: FinOutline): Shape[] {
  const top = f.base + f.height;
  const topEdge = f.edge + f.height * Math.tan(f.sweep);
  const rudder = f.rootChord * f.rudderShare;
  const hinge = f.edge + f.rootChord - rudder;
  const topHinge = topEdge + f.tipChord * (1 - f.rudderShare);
  const end = f.edge + f.rootChord;
  const topEnd = topEdge + f.tipChord;
  return [
    { view: 'side', part: 'fin', points: [f.edge, f.base, topEdge, top, topHinge, top, hinge, f.base], closed: true },
    { view: 'side', part: 'rudder', points: [hinge, f.base, topHinge, top, topEnd, top, end, f.base], closed: true },
    { view: 'plan', part: 'fin', points: [f.edge, 0, hinge, 0] },
    {
      view: 'plan',
      part: 'rudder',
      points: [hinge, 0, hinge + rudder * Math.cos(f.rudderAngle), rudder * Math.sin(f.rudderAngle)],
    },
  ];
}
