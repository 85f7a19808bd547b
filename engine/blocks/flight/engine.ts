import { findKnot, newKnot, readKnot } from '../../numerics/index';
import {
  advanceRatio,
  type FlightSetup,
  type FlightSolution,
  propellerEfficiency,
  soundSpeed,
  thrustCoefficient,
  tipMach,
} from '../../physics/index';
import type { Columns } from '../block';
import type { flightLinks } from './fields';
import type { flightResults } from './results';

const knot = newKnot();
const read = new Float64Array(4);

/** A curve of the engine at the speed of the solution, to read[o]. */
function readCurve(m: Float64Array, at: number, setup: FlightSetup, s: FlightSolution, o: number): void {
  findKnot(setup.knotStep, setup.knotCount, s.speed, knot);
  readKnot(m, at, setup.stride, knot, read, o);
}

/** What the solution says of the propeller and of fuel or charge a lap. */
export function writeEngineUse(
  m: Float64Array,
  { air, engine }: Columns<typeof flightLinks>,
  r: Columns<typeof flightResults>,
  i: number,
  setup: FlightSetup,
  s: FlightSolution,
): void {
  const diameter = m[engine.propeller_diameter + i]!;
  const n = s.shaftSpeed / (2 * Math.PI);
  m[r.advance_ratio + i] = advanceRatio(s.speed, n, diameter);
  m[r.thrust_coefficient + i] = thrustCoefficient(s.thrust, setup.density, n, diameter);
  m[r.propeller_efficiency + i] = propellerEfficiency(s.thrust, s.torque * s.shaftSpeed, s.speed);
  m[r.tip_mach + i] = tipMach(s.speed, n, diameter, soundSpeed(m[air.pressure + i]!, setup.density));
  readCurve(m, engine.fuel_flow + i, setup, s, 0);
  readCurve(m, engine.current + i, setup, s, 2);
  const lap = m[r.lap_time + i]!;
  m[r.fuel_per_lap + i] = read[0]! * lap;
  m[r.charge_per_lap + i] = read[2]! * lap;
}
