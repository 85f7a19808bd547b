import { periodicSlopes, solvePeriodic } from '../../numerics/index';
import { type Constants, forces, trimStep } from '../flight/index';
import { linesInWind } from './lines-in-wind';
import { LINES, type Rows, type WindRoom } from './room';
import { pullThere } from './trim';
import type { Wind } from './wind-lap';

/** Largest change of an angle in one step, and largest angle, rad. */
const ANGLE_STEP = 0.3;
const WIDEST = 1;
const ROUNDS = 20;
/** Change of speed (m/s) over which the drag of the lines is straight: what bends is less than its square over that of the speed, 2e-9. */
const NEARBY = 1e-3;

/** How near a lap has to come: the largest step of its speeds (m/s), and what is out of balance, of the weight (moments: of the weight × 1 m). */
export interface Near {
  readonly step: number;
  readonly imbalance: number;
  /** That last step is taken as well. */
  readonly further: boolean;
}

/**
 * Newton's method on speed, sideslip, roll and pitch at all places of a lap at once, from what stands in `rows`; gives the rounds, negative where
 * it does not settle.
 *
 *   δβ = β₀ + β' δV and likewise δδ, δθ: yaw, roll and wing balanced place by place
 *   d(δE)/dθ_a − R cos φ F_t'/(m_eff V) δE = R cos φ F_t/m_eff − dE/dθ_a,  E = V²/2,  δE = V δV
 *
 * F_t and F_t' with the angles eliminated (`trimStep`). Drag that leans in the wind is that of the round before, carried on by its slopes, with which
 * it agrees when the lap has settled.
 * Derivation: linearised equation of motion of the lap.
 */
export function settleLap(room: WindRoom, wind: Wind, rows: Rows, near: Near): number {
  rows.lines.fill(Number.NaN);
  for (let round = 1; round <= ROUNDS; round++) {
    const off = lookAround(room, wind, rows);
    if (!Number.isFinite(off)) return -round;
    const step = stepAround(room.c, rows);
    if (!Number.isFinite(step)) return -round;
    if (step < near.step && off < near.imbalance) return near.further && !takeStep(rows) ? -round : round;
    if (!takeStep(rows)) return -round;
  }
  return -ROUNDS;
}

/** Forces and steps of the angles at every place; gives the largest imbalance of the weight, not a number where the model can't be there. */
function lookAround(room: WindRoom, wind: Wind, rows: Rows): number {
  const c = room.c;
  const b = room.b;
  const at = room.at;
  const air = room.air;
  const state = room.state;
  const r = b.residual;
  const follows = b.dragSlopes;
  const slopes = rows.dragSlopes;
  const wave = rows.wave;
  const n = rows.places;
  const W = wind.speed;
  let off = 0;
  air.still = W === 0;
  for (let k = 0; k < n; k++) {
    const outward = W * wave.cosine[k]!;
    air.along = -W * wave.sine[k]!;
    air.out = outward * c.cosElevation;
    air.up = -outward * c.sinElevation;
    state.speed = rows.speed[k]!;
    state.sideslip = rows.sideslip[k]!;
    state.roll = rows.roll[k]!;
    state.pitch = rows.pitch[k]!;
    if (!(state.speed - air.along > 1)) return Number.NaN;
    linesThere(room, wind, rows, k);
    const drag = rows.drag[k]!;
    b.drag = drag;
    follows[0] = slopes[4 * k]!;
    follows[1] = slopes[4 * k + 1]!;
    follows[2] = slopes[4 * k + 2]!;
    follows[3] = slopes[4 * k + 3]!;
    forces(c, state, air, b);
    trimStep(b, at);
    slopes[4 * k] = follows[0]!;
    slopes[4 * k + 1] = follows[1]!;
    slopes[4 * k + 2] = follows[2]!;
    slopes[4 * k + 3] = follows[3]!;
    rows.drag[k] = b.drag;
    const balance = Math.abs(r[1]!) + Math.abs(r[2]!) + Math.abs(r[3]!);
    const here = air.still ? balance : balance + Math.abs(b.drag - drag);
    if (!(here <= off)) off = here;
    rows.path[k] = r[0]!;
    rows.tension[k] = b.tensionInward;
    rows.pull[k] = pullThere(room);
    rows.wingLift[k] = b.wingLift;
    rows.across[k] = b.across;
    rows.determinant[k] = at.determinant;
    rows.step[k] = at.left;
    rows.growth[k] = at.slope;
    rows.slip[k] = at.sideslip;
    rows.lean[k] = at.roll;
    rows.nose[k] = at.pitch;
    rows.slipPerSpeed[k] = at.sideslipPerSpeed;
    rows.leanPerSpeed[k] = at.rollPerSpeed;
    rows.nosePerSpeed[k] = at.pitchPerSpeed;
  }
  return off / c.weight;
}

/** What the lines do at the state's speed, by their slopes where the speed was nearly that when they were last looked at. */
function linesThere(room: WindRoom, wind: Wind, rows: Rows, k: number): void {
  const b = room.b;
  const kept = rows.lines;
  const at = LINES * k;
  const more = room.state.speed - kept[at]!;
  if (Math.abs(more) < NEARBY) {
    b.lineDrag = kept[at + 1]! + kept[at + 2]! * more;
    b.lineDragSlope = kept[at + 2]!;
    b.linePress = kept[at + 3]! + kept[at + 4]! * more;
    b.linePressSlope = kept[at + 4]!;
    return;
  }
  linesInWind(room.c, room.state, room.air, wind.profile, b);
  kept[at] = room.state.speed;
  kept[at + 1] = b.lineDrag;
  kept[at + 2] = b.lineDragSlope;
  kept[at + 3] = b.linePress;
  kept[at + 4] = b.linePressSlope;
}

/** Newton's step of all speeds, to `step`; gives its largest, m/s, not a number where one would come to a stand. */
function stepAround(c: Constants, rows: Rows): number {
  const n = rows.places;
  const V = rows.speed;
  const step = rows.step;
  const growth = rows.growth;
  const energy = rows.energy;
  const perForce = (c.radius * c.cosElevation) / (c.setup.mass + c.linesMass / 3);
  for (let k = 0; k < n; k++) {
    growth[k] = (perForce * growth[k]!) / V[k]!;
    energy[k] = 0.5 * V[k]! * V[k]!;
  }
  periodicSlopes(rows.wave, energy, rows.share);
  for (let k = 0; k < n; k++) step[k] = perForce * step[k]! - rows.share[k]!;
  solvePeriodic(rows.wave, growth, step);
  let largest = 0;
  for (let k = 0; k < n; k++) {
    const change = step[k]! / V[k]!;
    step[k] = change;
    const size = Math.abs(change);
    if (!(size <= largest)) largest = size;
    if (!(V[k]! + change > 0)) return Number.NaN;
  }
  return largest;
}

/** Takes the step, with drag along; false where an angle has none. */
function takeStep(rows: Rows): boolean {
  const n = rows.places;
  const slopes = rows.dragSlopes;
  for (let k = 0; k < n; k++) {
    const speed = rows.step[k]!;
    const sideslip = held(rows.slip[k]! + rows.slipPerSpeed[k]! * speed);
    const roll = held(rows.lean[k]! + rows.leanPerSpeed[k]! * speed);
    const pitch = held(rows.nose[k]! + rows.nosePerSpeed[k]! * speed);
    rows.speed[k]! += speed;
    rows.sideslip[k] = inside(rows.sideslip[k]! + sideslip);
    rows.roll[k] = inside(rows.roll[k]! + roll);
    rows.pitch[k] = inside(rows.pitch[k]! + pitch);
    rows.drag[k]! +=
      slopes[4 * k]! * speed + slopes[4 * k + 1]! * sideslip + slopes[4 * k + 2]! * roll + slopes[4 * k + 3]! * pitch;
    if (!Number.isFinite(rows.sideslip[k]! + rows.roll[k]! + rows.pitch[k]!)) return false;
  }
  return true;
}

const held = (change: number): number => Math.max(-ANGLE_STEP, Math.min(ANGLE_STEP, change));
const inside = (angle: number): number => Math.max(-WIDEST, Math.min(WIDEST, angle));
