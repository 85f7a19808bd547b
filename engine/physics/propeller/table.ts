import { findRoot, interpolateAt } from '../../numerics/index';
import { positive } from '../domain';
import { newPropellerState, type PreparedPropeller, type PropellerAir, propellerState } from './blade-elements';

/** Advance ratios at which coefficients are tabulated: 0, step, 2 step …; the step is the propeller's own. */
export const ADVANCE_KNOTS = 12;
/** Tip speeds of turning π n D (m/s) at which they are tabulated; below the first and above the last that row holds. */
const FIRST_TIP_SPEED = 40;
const TIP_STEP = 60;
const TIP_KNOTS = 5;
export const PROPELLER_KNOTS = ADVANCE_KNOTS * TIP_KNOTS;

/** C_T and C_P over advance ratio and tip speed, anywhere in an array of columns. */
export interface PropellerTable {
  /** D, m. */
  diameter: number;
  /** Of the advance ratio between knots. */
  advanceStep: number;
  values: Float64Array;
  /** Where each begins; knot k lies k strides further, rows of one tip speed one after another. */
  thrustAt: number;
  powerAt: number;
  stride: number;
}

/** Greatest advance ratio of the table over pitch/diameter, and what is added for flat pitches. */
const BEYOND_PITCH = 1.4;
const BEYOND_FLAT = 0.2;

/** Step of a table that reaches beyond zero thrust: (1.4 p/D + 0.2)/11. */
export const advanceStepOf = (pitch: number, diameter: number): number =>
  (BEYOND_PITCH * (pitch / positive('propeller diameter', diameter)) + BEYOND_FLAT) / (ADVANCE_KNOTS - 1);

const state = newPropellerState();

/** What the rings of a whole table did. */
export interface TableSolved {
  /** All rings found a flow. */
  readonly settled: boolean;
  /** Greatest of all rings. */
  readonly iterations: number;
  readonly residual: number;
}

/** Fills both halves of the table by blade elements. */
export function tabulatePropeller(p: PreparedPropeller, air: PropellerAir, to: PropellerTable): TableSolved {
  let settled = true;
  let [iterations, residual] = [0, 0];
  for (let row = 0; row < TIP_KNOTS; row++) {
    const turns = (FIRST_TIP_SPEED + row * TIP_STEP) / (Math.PI * p.diameter);
    for (let k = 0; k < ADVANCE_KNOTS; k++) {
      propellerState(p, k * to.advanceStep, turns, air, state);
      settled &&= state.settled;
      iterations = Math.max(iterations, state.iterations);
      residual = Math.max(residual, state.residual);
      writeKnot(to, row, k, state.thrust, state.power);
    }
  }
  return { settled, iterations, residual };
}

/** Fills the table with coefficients that were measured against the advance ratio alone. */
export function tabulateMeasured(
  thrust: (J: number) => number,
  power: (J: number) => number,
  to: PropellerTable,
): void {
  for (let row = 0; row < TIP_KNOTS; row++) {
    for (let k = 0; k < ADVANCE_KNOTS; k++) {
      writeKnot(to, row, k, thrust(k * to.advanceStep), power(k * to.advanceStep));
    }
  }
}

function writeKnot(to: PropellerTable, row: number, k: number, thrust: number, power: number): void {
  const at = (row * ADVANCE_KNOTS + k) * to.stride;
  to.values[to.thrustAt + at] = thrust;
  to.values[to.powerAt + at] = power;
}

const rows = new Float64Array(TIP_KNOTS);
const read = new Float64Array(2);

function readAt(table: PropellerTable, at: number, advanceRatio: number, tipSpeed: number): number {
  const { values, stride, advanceStep } = table;
  for (let row = 0; row < TIP_KNOTS; row++) {
    const start = at + row * ADVANCE_KNOTS * stride;
    interpolateAt(values, start, stride, advanceStep, ADVANCE_KNOTS, advanceRatio, read, 0);
    rows[row] = read[0]!;
  }
  const along = Math.min(TIP_STEP * (TIP_KNOTS - 1), Math.max(0, tipSpeed - FIRST_TIP_SPEED));
  interpolateAt(rows, 0, 1, TIP_STEP, TIP_KNOTS, along, read, 0);
  return read[0]!;
}

/** C_T at the advance ratio J and the tip speed π n D (m/s), between the knots by monotone cubics; straight beyond the last J. */
export const thrustCoefficientAt = (table: PropellerTable, J: number, tipSpeed: number): number =>
  readAt(table, table.thrustAt, J, tipSpeed);

/** C_P, likewise. */
export const powerCoefficientAt = (table: PropellerTable, J: number, tipSpeed: number): number =>
  readAt(table, table.powerAt, J, tipSpeed);

/**
 * P = C_T ρ n² D⁴: thrust (N) at the airspeed V (m/s) and the shaft speed Ω (rad/s), n = Ω/2π, J = V/(n D), ρ (kg/m³). By
 * definition of C_T.
 */
export function tableThrust(table: PropellerTable, density: number, airspeed: number, shaftSpeed: number): number {
  const { diameter } = table;
  const n = shaftSpeed / (2 * Math.PI);
  return (
    density * n * n * diameter ** 4 * thrustCoefficientAt(table, airspeed / (n * diameter), Math.PI * n * diameter)
  );
}

/** Q = C_P ρ n² D⁵/2π: torque (N·m), likewise. By definition of C_P. */
export function tableTorque(table: PropellerTable, density: number, airspeed: number, shaftSpeed: number): number {
  const { diameter } = table;
  const n = shaftSpeed / (2 * Math.PI);
  const power = powerCoefficientAt(table, airspeed / (n * diameter), Math.PI * n * diameter);
  return (density * n * n * diameter ** 5 * power) / (2 * Math.PI);
}

/** Where the search for zero thrust ends, in steps of the table. */
const FURTHEST = 2 * ADVANCE_KNOTS;

/** J at which C_T vanishes at a tip speed (m/s); NaN where there is none. */
export function zeroThrustAdvance(table: PropellerTable, tipSpeed: number): number {
  const thrust = (J: number): number => thrustCoefficientAt(table, J, tipSpeed);
  const root = findRoot(thrust, 0, FURTHEST * table.advanceStep, { tolerance: 1e-7 });
  return root.status === 'settled' ? root.value : Number.NaN;
}

/** η = P V/W: efficiency of a propeller that gives the thrust P (N) for the shaft power W (W) at the airspeed V (m/s); NaN where it brakes. */
export const propellerEfficiency = (thrust: number, power: number, airspeed: number): number =>
  thrust > 0 && power > 0 ? (thrust * airspeed) / power : Number.NaN;
