import { type Running, shaftSpeedAt, type TorqueCurve, tableThrust, tableTorque } from '../../physics/index';
import { MOMENT, POWER, RATE } from '../../units/index';
import type { Columns, Result } from '../block';
import { AIRSPEED_KNOTS } from '../curve';
import { NEWTONS } from '../measures';
import { tableAt } from '../propeller/look';
import type { propellerResults } from '../propeller/results';
import { solverResults } from '../solver';
import { type fuelFields, writeFuel } from './fuel-use';
import { type Propelled, writePlace } from './mount';
import type { engineResults } from './results';

/** What an engine with a propeller of its own tells beside what every engine does. */
export const propelledResults = {
  static_shaft_speed: {
    dimension: RATE,
    unit: 'rpm',
    symbol: 'n_0',
    title: 'Rpm at rest',
    doc: 'Where engine and propeller agree with the model held on the ground.',
  },
  static_thrust: {
    ...NEWTONS,
    symbol: 'P_0',
    title: 'Thrust at rest',
    doc: 'Pull of the model held on the ground. Hold it well.',
  },
  ...solverResults({
    of: 'Of the rpm at which engine and propeller agree, at every airspeed',
    steps: 'Most of all airspeeds.',
    residual: {
      dimension: MOMENT,
      unit: 'N·m',
      tradeUnit: 'ozf·in',
      doc: 'Torque that is left over, the largest of all airspeeds.',
    },
  }),
  static_power: {
    dimension: POWER,
    unit: 'W',
    symbol: 'W_0',
    title: 'Power at rest',
    doc: 'Shaft power with the model held on the ground.',
    detail: true,
  },
} as const satisfies Readonly<Record<string, Result>>;

export const propelledReasons = {
  too_large:
    'The propeller ({propeller.diameter} × {propeller.pitch}) is too large for the engine: it asks for more torque than there is at any rpm at which the engine runs. A smaller diameter or a finer pitch would do.',
} as const;

/** Torque of an engine and the shaft speeds between which it is sought. */
export interface Drive extends Running {
  readonly torque: TorqueCurve;
}

/**
 * Thrust, torque, power and shaft speed at every airspeed, where engine and propeller agree. `hold` may lower the shaft speed
 * that was found (a governor); its torque is then the propeller's.
 */
export function writeDrive(
  m: Float64Array,
  from: Columns<typeof propellerResults>,
  r: Columns<typeof engineResults & typeof propelledResults>,
  i: number,
  stride: number,
  density: number,
  { torque, slowest, fastest }: Drive,
  hold = Number.POSITIVE_INFINITY,
): 'too_large' | undefined {
  const table = tableAt(m, from, i, stride);
  const pitch = m[from.pitch + i]!;
  let [iterations, residual] = [0, 0];
  for (let k = 0; k < AIRSPEED_KNOTS.length; k++) {
    const at = k * stride + i;
    const airspeed = AIRSPEED_KNOTS[k]!;
    const root = shaftSpeedAt(torque, table, density, airspeed, pitch, slowest, fastest);
    if (root.status !== 'settled') return 'too_large';
    iterations = Math.max(iterations, root.iterations);
    residual = Math.max(residual, Math.abs(root.residual));
    const speed = Math.min(hold, root.value);
    const load = tableTorque(table, density, airspeed, speed);
    m[r.thrust + at] = tableThrust(table, density, airspeed, speed);
    m[r.torque + at] = load;
    m[r.power + at] = load * speed;
    m[r.shaft_speed + at] = speed;
  }
  m[r.status + i] = 0;
  m[r.iterations + i] = iterations;
  m[r.residual + i] = residual;
  m[r.static_shaft_speed + i] = m[r.shaft_speed + i]!;
  m[r.static_thrust + i] = m[r.thrust + i]!;
  m[r.static_power + i] = m[r.power + i]!;
  return undefined;
}

/** The end of every engine that burns fuel and turns a propeller of its own: how it stands, and its fuel at every airspeed. */
export function writeFuelled(
  m: Float64Array,
  f: Propelled & Columns<typeof fuelFields>,
  r: Columns<typeof engineResults>,
  i: number,
  stride: number,
): 'half_measured' | undefined {
  writePlace(m, f, r, i);
  return writeFuel(m, f, r, i, stride);
}
