import { solveDense } from '../../../../engine/numerics/index';
import {
  CALM,
  type FlightSetup,
  forces,
  fullStep,
  linesInCalm,
  newBalance,
  newConstants,
  newStep,
  prepare,
} from '../../../../engine/physics/flight/index';

/**
 * Looks for steady flights the dumb way: at many speeds and from several angles it balances yaw, roll and lift with a
 * plain Newton iteration of its own, and notes where the spare thrust changes sign from one speed to the next.
 */

const c = newConstants();
const b = newBalance();
const step = newStep();
const a = new Float64Array(9);
const x = new Float64Array(3);
const LIMIT = 0.8;

const STARTS: readonly (readonly [number, number, number])[] = [
  [0, 0, 0.05],
  [0.4, 0.5, 0.05],
  [-0.4, 0.5, 0.05],
  [0.4, -0.5, 0.05],
  [-0.4, -0.5, 0.05],
];

function balanced(V: number, s: number[]): boolean {
  for (let n = 0; n < 30; n++) {
    const at = { speed: V, sideslip: s[0]!, roll: s[1]!, pitch: s[2]! };
    linesInCalm(c, at, b);
    forces(c, at, CALM, b);
    const r = b.residual;
    const most = Math.max(Math.abs(r[1]!), Math.abs(r[2]!), Math.abs(r[3]!)) / c.weight;
    if (most < 1e-9) return Math.max(...s.map(Math.abs)) <= LIMIT;
    for (let i = 0; i < 3; i++) {
      x[i] = -r[i + 1]!;
      for (let j = 0; j < 3; j++) a[3 * i + j] = b.jacobian[4 * (i + 1) + j + 1]!;
    }
    if (solveDense(a, x, 3) === 0) return false;
    const big = Math.max(Math.abs(x[0]!), Math.abs(x[1]!), Math.abs(x[2]!));
    const share = big > 0.3 ? 0.3 / big : 1;
    for (let i = 0; i < 3; i++) s[i]! += share * x[i]!;
    if (Math.max(...s.map(Math.abs)) > 1.4) return false;
  }
  return false;
}

interface Found {
  readonly angles: number[];
  readonly spare: number;
}

/** Pairs of speeds between which there is a steady flight on the fast side with tight lines, fastest first. */
export function bruteRoots(setup: FlightSetup, speeds: number, starts: number): [number, number][] {
  if (!prepare(setup, c)) return [];
  let top = 0;
  for (let k = 0; k < setup.knotCount - 1; k++) {
    if (setup.curves[setup.thrustAt + k * setup.stride]! > 0) top = (k + 1) * setup.knotStep;
  }
  // A propeller that pulls at the last knot: look as far as a straight end would go.
  const last = setup.curves[setup.thrustAt + (setup.knotCount - 1) * setup.stride]!;
  if (last > 0) top = 250;
  const roots: [number, number][] = [];
  let before: Found[] = [];
  let speedBefore = top;
  for (let k = 0; k < speeds; k++) {
    const V = top * (1 - k / speeds);
    const here: Found[] = [];
    const tries = before.map((f) => f.angles);
    if (before.length === 0 || k % 10 === 0) for (const start of STARTS.slice(0, starts)) tries.push([...start]);
    for (const start of tries) {
      const angles = [...start];
      if (!balanced(V, angles) || !(b.tensionInward > 0)) continue;
      fullStep(b, step);
      if (!(step.determinant > 0)) continue;
      const known = here.some((f) => Math.abs(f.angles[0]! - angles[0]!) + Math.abs(f.angles[1]! - angles[1]!) < 1e-5);
      if (!known) here.push({ angles, spare: b.residual[0]! });
    }
    for (const low of here) {
      const crossed = before.some(
        (high) =>
          Math.abs(high.angles[0]! - low.angles[0]!) + Math.abs(high.angles[1]! - low.angles[1]!) < 0.15 &&
          high.spare < 0 &&
          low.spare >= 0,
      );
      if (crossed) roots.push([V, speedBefore]);
    }
    before = here;
    speedBefore = V;
  }
  return roots;
}
