import { interpolateAt } from '../../numerics/index';
import { type FlightSetup, type FlightSolution, propellerEfficiency, soundSpeed } from '../../physics/index';
import type { Columns } from '../block';
import type { flightLinks } from './fields';
import type { flightResults } from './results';

const read = new Float64Array(2);

/** What the solution says of the propeller and of fuel or charge. */
export function writeEngineUse(
  m: Float64Array,
  { air, engine }: Columns<typeof flightLinks>,
  r: Columns<typeof flightResults>,
  i: number,
  setup: FlightSetup,
  s: FlightSolution,
  lap: number,
): void {
  const diameter = m[engine.propeller_diameter + i]!;
  const n = s.shaftSpeed / (2 * Math.PI);
  m[r.advance_ratio + i] = s.speed / (n * diameter);
  m[r.thrust_coefficient + i] = s.thrust / (setup.density * n * n * diameter ** 4);
  m[r.propeller_efficiency + i] = propellerEfficiency(s.thrust, s.torque * s.shaftSpeed, s.speed);
  m[r.tip_mach + i] = Math.hypot(Math.PI * n * diameter, s.speed) / soundSpeed(m[air.pressure + i]!, setup.density);
  const at = (curve: number): number => {
    interpolateAt(m, curve + i, setup.stride, setup.knotStep, setup.knotCount, s.speed, read, 0);
    return read[0]!;
  };
  const fuel = at(engine.fuel_flow) * lap;
  const charge = at(engine.current) * lap;
  const laps = fuel > 0 ? m[engine.tank_volume + i]! / fuel : m[engine.pack_charge + i]! / charge;
  const spread = m[engine.flow_spread + i]!;
  m[r.fuel_per_lap + i] = fuel;
  m[r.charge_per_lap + i] = charge;
  m[r.laps_per_filling + i] = laps;
  m[r.laps_per_filling_low + i] = laps / spread;
  m[r.laps_per_filling_high + i] = laps * spread;
}
