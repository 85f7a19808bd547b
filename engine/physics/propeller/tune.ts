import { positive } from '../domain';
import { newPropellerState, type PreparedPropeller, type PropellerAir, propellerState } from './blade-elements';

/** What a propeller was measured to pull at a state: n turns a second, J = V/(n D), C_T = P/(ρ n² D⁴). */
export interface PulledState {
  readonly turns: number;
  readonly advanceRatio: number;
  readonly thrust: number;
}

type TuningStatus = 'settled' | 'out of reach';

export interface Tuning {
  status: TuningStatus;
  /** Added to all blade angles, rad; the same as a lower zero-lift angle of the section. */
  shift: number;
  /** What all chords are multiplied by. */
  chordFactor: number;
  iterations: number;
  /** Largest of C_T computed over measured, less one. */
  residual: number;
}

export const newTuning = (): Tuning => ({ status: 'settled', shift: 0, chordFactor: 1, iterations: 0, residual: 0 });

/**
 * How far real blades lie beside the computed ones, standard deviations over the thirteen measured propellers tuned by two points each: of the angle
 * (rad) and of the chord factor. They say only how a single measurement is shared out.
 */
export const ANGLE_SPREAD = (0.8 * Math.PI) / 180;
export const CHORD_SPREAD = 0.115;

/** Tuning beyond these is no answer: a typing error, a wrong marking or a stalled blade. */
const SHIFT_LIMIT = (8 * Math.PI) / 180;
const CHORD_LIMITS = [0.5, 2] as const;

const STEPS = 40;
/** C_T matched to within this share. */
const MATCHED = 1e-9;
/** For slopes, and the longest step, in spreads. */
const NUDGE = 1e-3;
const LONGEST = 1.5;

const state = newPropellerState();

/** The blade turned by an angle (rad) and with its chords multiplied. */
export const tunedBlade = (p: PreparedPropeller, shift: number, chordFactor: number): PreparedPropeller => ({
  ...p,
  angle: p.angle.map((angle) => angle + shift),
  chord: p.chord.map((chord) => chord * chordFactor),
});

/**
 * The shift of the blade angle and the chord factor with which a propeller pulls what was measured at one or two states.
 *
 * With u = Δβ/s_β and v = (f − 1)/s_f:  C_T(u, v) = measured at each state; of one state alone, with the least u² + v². Gauss and Newton with
 * slopes by differences, for one state x ← Jᵀ (J Jᵀ)⁻¹ (J x − r). Derivation; thrust by `propellerState`.
 */
export function tunePropeller(
  p: PreparedPropeller,
  air: PropellerAir,
  measured: readonly PulledState[],
  out: Tuning,
): void {
  if (measured.length !== 1 && measured.length !== 2) {
    throw new RangeError(`measured has ${measured.length} states; it must have 1 or 2`);
  }
  for (const { thrust } of measured) positive('measured thrust coefficient', thrust);
  let [u, v] = [0, 0];
  for (let n = 1; n <= STEPS; n++) {
    const left = leftOpen(p, air, measured, u, v);
    out.iterations = n;
    out.residual = Math.max(...left.map(Math.abs));
    if (out.residual < MATCHED) break;
    const byAngle = leftOpen(p, air, measured, u + NUDGE, v).map((value, k) => (value - left[k]!) / NUDGE);
    const byChord = leftOpen(p, air, measured, u, v + NUDGE).map((value, k) => (value - left[k]!) / NUDGE);
    const [du, dv] = step(left, byAngle, byChord, u, v);
    const longest = Math.max(Math.abs(du), Math.abs(dv));
    if (!Number.isFinite(longest)) break;
    const share = Math.min(1, LONGEST / longest);
    u += share * du;
    v += share * dv;
    if (!within(u, v)) break;
  }
  out.shift = u * ANGLE_SPREAD;
  out.chordFactor = 1 + v * CHORD_SPREAD;
  out.status = out.residual < MATCHED ? 'settled' : 'out of reach';
}

/** C_T over the measured one, less one, at each state. */
function leftOpen(
  p: PreparedPropeller,
  air: PropellerAir,
  measured: readonly PulledState[],
  u: number,
  v: number,
): number[] {
  const blade = tunedBlade(p, u * ANGLE_SPREAD, 1 + v * CHORD_SPREAD);
  return measured.map(({ turns, advanceRatio, thrust }) => {
    propellerState(blade, advanceRatio, turns, air, state);
    return state.thrust / thrust - 1;
  });
}

function step(
  left: readonly number[],
  byAngle: readonly number[],
  byChord: readonly number[],
  u: number,
  v: number,
): [number, number] {
  const [a, b, r] = [byAngle[0]!, byChord[0]!, left[0]!];
  if (left.length === 1) {
    const along = (a * u + b * v - r) / (a * a + b * b);
    return [a * along - u, b * along - v];
  }
  const [c, d, s] = [byAngle[1]!, byChord[1]!, left[1]!];
  const determinant = a * d - b * c;
  return [(s * b - r * d) / determinant, (r * c - s * a) / determinant];
}

function within(u: number, v: number): boolean {
  const factor = 1 + v * CHORD_SPREAD;
  return Math.abs(u * ANGLE_SPREAD) <= SHIFT_LIMIT && factor >= CHORD_LIMITS[0] && factor <= CHORD_LIMITS[1];
}

/**
 * How far the thrust in flight may lie beside the computed one, as a share: root mean square over thirteen measured propellers, from 0.7 to 1.07 of
 * the advance ratio of their flight, by what was measured: nothing, the pull at rest, that in flight, both.
 */
export const THRUST_BAND = { nothing: 0.14, still: 0.06, flying: 0.03, both: 0.03 } as const;
