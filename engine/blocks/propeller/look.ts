import {
  advanceRatio,
  type PropellerTable,
  powerCoefficientAt,
  propellerEfficiency,
  tableThrust,
  tableTorque,
  thrustCoefficientAt,
  tipMach,
  zeroThrustAdvance,
} from '../../physics/index';
import { RATE } from '../../units/index';
import type { Columns, Field } from '../block';
import { AIRSPEED } from '../measures';
import type { propellerResults } from './results';

/** The state at which a propeller by itself is looked at: engines find their own. */
export const lookFields = {
  at_shaft_speed: {
    dimension: RATE,
    unit: 'rpm',
    symbol: 'n',
    title: 'Rpm to look at',
    doc: 'For the results of this piece; engines and flight find their own rpm.',
    default: (12000 * 2 * Math.PI) / 60,
    range: [(500 * 2 * Math.PI) / 60, (60000 * 2 * Math.PI) / 60],
  },
  at_airspeed: {
    ...AIRSPEED,
    symbol: 'V',
    title: 'Airspeed to look at',
    doc: 'For the results of this piece; engines and flight find their own airspeed.',
    default: 25,
    range: [0, 100],
  },
} as const satisfies Readonly<Record<string, Field>>;

const table: PropellerTable = {
  diameter: 0,
  advanceStep: 0,
  values: new Float64Array(),
  thrustAt: 0,
  powerAt: 0,
  stride: 1,
};

/** The tables of a propeller among the columns; one record, filled anew at each call. */
export function tableAt(
  m: Float64Array,
  r: Columns<typeof propellerResults>,
  i: number,
  stride: number,
): PropellerTable {
  table.diameter = m[r.diameter + i]!;
  table.advanceStep = m[r.advance_step + i]!;
  table.values = m;
  table.thrustAt = r.thrust_table + i;
  table.powerAt = r.power_table + i;
  table.stride = stride;
  return table;
}

/** Everything that is said of the propeller at the rpm and airspeed looked at, from its tables. */
export function writeLook(
  m: Float64Array,
  f: Columns<typeof lookFields>,
  r: Columns<typeof propellerResults>,
  i: number,
  stride: number,
  density: number,
  sound: number,
): void {
  const read = tableAt(m, r, i, stride);
  const shaftSpeed = m[f.at_shaft_speed + i]!;
  const airspeed = m[f.at_airspeed + i]!;
  const n = shaftSpeed / (2 * Math.PI);
  const tipSpeed = Math.PI * n * read.diameter;
  const J = advanceRatio(airspeed, n, read.diameter);
  const thrust = tableThrust(read, density, airspeed, shaftSpeed);
  const torque = tableTorque(read, density, airspeed, shaftSpeed);
  m[r.static_thrust + i] = tableThrust(read, density, 0, shaftSpeed);
  m[r.thrust + i] = thrust;
  m[r.torque + i] = torque;
  m[r.power + i] = torque * shaftSpeed;
  m[r.efficiency + i] = propellerEfficiency(thrust, torque * shaftSpeed, airspeed);
  m[r.advance_ratio + i] = J;
  m[r.thrust_coefficient + i] = thrustCoefficientAt(read, J, tipSpeed);
  m[r.power_coefficient + i] = powerCoefficientAt(read, J, tipSpeed);
  m[r.pitch_speed + i] = n * m[r.pitch + i]!;
  m[r.zero_thrust_speed + i] = zeroThrustAdvance(read, tipSpeed) * n * read.diameter;
  m[r.tip_mach + i] = tipMach(airspeed, n, read.diameter, sound);
}
