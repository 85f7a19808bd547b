import {
  advanceRatio,
  newTuning,
  type PreparedPropeller,
  type PropellerAir,
  type PulledState,
  THRUST_BAND,
  thrustCoefficient,
  tunedBlade,
  tunePropeller,
} from '../../physics/index';
import type { Columns, Keeps, Result } from '../block';
import { ANGLE, PLAIN, SHARE, typedOr } from '../measures';
import { solverResults } from '../solver';
import { type propellerFields, TYPED_STATIONS } from './fields';

/** How the search may end: of them the first two have a propeller. */
const ENDS = ['settled', 'nothing measured'] as const;
const tuningSolver = solverResults({
  of: 'Of the blade that pulls what was measured',
  steps: 'Of Newton’s method.',
  residual: { ...PLAIN, doc: 'Of thrust computed over measured, less one, the largest of both.' },
  ends: ENDS,
});

const band = (symbol: string, title: string, doc: string): Result => ({ ...SHARE, symbol, title, doc, detail: true });

/** What measured pulls make of the blade. */
export const tuningResults = {
  tuned_shift: {
    ...ANGLE,
    symbol: 'Δβ_m',
    title: 'Shift of the blade angle in use',
    doc: 'As typed, or as the measured pull needs it. “Keep as own row” keeps the propeller with it.',
    detail: true,
  },
  tuned_chord: {
    ...PLAIN,
    symbol: 'f_m',
    title: 'Chord factor in use',
    doc: 'As typed, or as the measured pull needs it.',
    detail: true,
  },
  band_before: band(
    'b_0',
    'Band of the thrust, untuned',
    'Two of three measured propellers lie within it in flight, either way, computed from mark and shape alone.',
  ),
  band_after: band(
    'b_1',
    'Band of the thrust in flight',
    'The same with what was measured here: at rest, in flight or both. Up to the advance ratio of best efficiency; beyond it, where thrust runs out, the band is wider.',
  ),
  tuning_status: tuningSolver.status,
  tuning_iterations: tuningSolver.iterations,
  tuning_residual: tuningSolver.residual,
} as const satisfies Readonly<Record<string, Result>>;

/** A propeller that was tuned, as a row of the user's own. */
export const tunedRow: Keeps = {
  table: 'propellers',
  title: '{diameter} × {pitch}, tuned',
  columns: {
    diameter: 'diameter',
    pitch: 'pitch',
    shape: 'shape',
    angle_shift: 'tuned_shift',
    chord_factor: 'tuned_chord',
  },
  measured: ['still_shaft_speed', 'still_pull', 'flying_shaft_speed', 'flying_speed', 'flying_pull'],
  lost: [
    'blades',
    ...['chord', 'angle'].flatMap((what) => TYPED_STATIONS.map((at) => `${what}_${Math.round(100 * at)}`)),
  ],
};

export const tuningReasons = {
  half_measured:
    'A measured pull is half typed. At rest it takes rpm and pull; in flight rpm, airspeed and pull. Type what is missing, or take the rest out.',
  typed_twice:
    'Shift of the blade angle or chord factor are typed, and a measured pull too, which finds them. Remove the typed ones, or the measured pulls.',
  not_tuned:
    'No propeller of this size and shape pulls what was measured, within 8° of blade angle and a half to double the chord. Look at rpm, pulls, diameter and pitch: one may be mistyped.',
};

const found = newTuning();

type Reason = keyof typeof tuningReasons;

/** The blade as typed or tuned, with the results told; a reason where there is none. */
export function tunedTo(
  m: Float64Array,
  f: Columns<typeof propellerFields>,
  r: Columns<typeof tuningResults>,
  i: number,
  blade: PreparedPropeller,
  density: number,
  air: PropellerAir,
): PreparedPropeller | Reason {
  const still = pulledState(m, i, [f.still_shaft_speed, f.still_pull], density, blade.diameter);
  const flying = pulledState(m, i, [f.flying_shaft_speed, f.flying_pull, f.flying_speed], density, blade.diameter);
  if (still === 'half' || flying === 'half') return 'half_measured';
  const measured = [still, flying].filter((state) => state !== undefined);
  const [shift, factor] = [m[f.angle_shift + i]!, m[f.chord_factor + i]!];
  m[r.band_before + i] = THRUST_BAND.nothing;
  m[r.band_after + i] = THRUST_BAND[flying ? (still ? 'both' : 'flying') : still ? 'still' : 'nothing'];
  found.iterations = 0;
  found.residual = 0;
  found.shift = typedOr(shift, 0);
  found.chordFactor = typedOr(factor, 1);
  if (measured.length > 0) {
    if (!Number.isNaN(shift) || !Number.isNaN(factor)) return 'typed_twice';
    tunePropeller(blade, air, measured, found);
    if (found.status !== 'settled') return 'not_tuned';
  }
  m[r.tuned_shift + i] = found.shift;
  m[r.tuned_chord + i] = found.chordFactor;
  m[r.tuning_status + i] = measured.length > 0 ? 0 : 1;
  m[r.tuning_iterations + i] = found.iterations;
  m[r.tuning_residual + i] = found.residual;
  return tunedBlade(blade, found.shift, found.chordFactor);
}

/** One measurement: shaft speed, pull and, in flight, airspeed; nothing where none is typed, `half` where some are. */
function pulledState(
  m: Float64Array,
  i: number,
  columns: readonly number[],
  density: number,
  diameter: number,
): PulledState | 'half' | undefined {
  const values = columns.map((column) => m[column + i]!);
  if (values.every(Number.isNaN)) return undefined;
  if (values.some(Number.isNaN)) return 'half';
  const [shaftSpeed, pull, airspeed = 0] = values as [number, number, number?];
  const turns = shaftSpeed / (2 * Math.PI);
  return {
    turns,
    advanceRatio: advanceRatio(airspeed, turns, diameter),
    thrust: thrustCoefficient(pull, density, turns, diameter),
  };
}
