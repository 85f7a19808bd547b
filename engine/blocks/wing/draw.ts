import type { Planform } from '../../physics/index';
import type { Shape } from '../block';

export interface WingOutline extends Planform {
  /** Thickness over chord. */
  readonly thickness: number;
  /** rad, leading edge up positive. */
  readonly incidence: number;
}

/** Corners of a panel from leading to trailing edge, m: station, and distance from the centreline toward its tip. */
export function edgeOf(w: WingOutline, side: 'inboard' | 'outboard'): (readonly [number, number])[] {
  const corners = side === 'inboard' ? w.inboardEdge : w.outboardEdge;
  if (corners) return corners.flatMap((y, k) => (k % 2 === 0 ? [[corners[k + 1]!, y] as const] : []));
  const [span, tip, sweep] =
    side === 'inboard'
      ? [w.inboardSpan, w.inboardTipChord, w.inboardSweep]
      : [w.outboardSpan, w.outboardTipChord, w.outboardSweep];
  const edge = span * Math.tan(sweep);
  return [
    [edge, span],
    [edge + tip, span],
  ];
}

/** Plan of both panels, and the section at the root in the side view. */
export function drawWing(w: WingOutline): Shape[] {
  const outboard = edgeOf(w, 'outboard');
  const inboard = edgeOf(w, 'inboard').map(([x, y]) => [x, -y] as const);
  const plan = [[0, 0], ...outboard, [w.rootChord, 0], ...inboard.reverse()].flat();
  return [
    { view: 'plan', part: 'wing', points: plan, closed: true },
    { view: 'side', part: 'wing', points: sectionOutline(w.rootChord, w.thickness, w.incidence), closed: true },
  ];
}

const CHORDWISE = [0.9, 0.75, 0.6, 0.45, 0.3, 0.2, 0.12, 0.06, 0.025, 0.006];

/** Outline of a symmetrical section: half thickness 5 t (0.2969 √x − 0.126 x − 0.3516 x² + 0.2843 x³ − 0.1015 x⁴) of the NACA four-digit family. */
function sectionOutline(chord: number, thickness: number, incidence: number): number[] {
  const half = (x: number): number =>
    5 * thickness * (0.2969 * Math.sqrt(x) - 0.126 * x - 0.3516 * x ** 2 + 0.2843 * x ** 3 - 0.1015 * x ** 4);
  const over = CHORDWISE.map((x) => [x, half(x)] as const);
  const under = [...CHORDWISE].reverse().map((x) => [x, -half(x)] as const);
  const [sine, cosine] = [Math.sin(incidence), Math.cos(incidence)];
  return [[1, 0] as const, ...over, [0, 0] as const, ...under].flatMap(([x, z]) => [
    chord * (x * cosine + z * sine),
    chord * (z * cosine - x * sine),
  ]);
}
