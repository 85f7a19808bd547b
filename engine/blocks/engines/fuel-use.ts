import { FUEL_KINDS } from '../../library/index';
import { FUELS, fuelFlow } from '../../physics/index';
import { DENSITY, MASS_PER_ENERGY, TIME } from '../../units/index';
import type { Columns, Field, Option } from '../block';
import { AIRSPEED_KNOTS } from '../curve';
import { FLUID, PLAIN } from '../measures';
import type { engineResults } from './results';

const MEASURED = 'By specific consumption: a guess within a factor of two. Measure what a flight draws.';
/** A measured draw holds for a set-up near the one that flew; a guess. */
const MEASURED_SPREAD = 1.1;

/** What an engine burns: measured over some laps, or by specific consumption. */
export const fuelFields = {
  fuel: {
    option: FUEL_KINDS,
    default: 'glow',
    symbol: '',
    title: 'Fuel',
    doc: 'Methanol for a glow engine; ether, oil and paraffin for a diesel, which burns far less. Methanol burns with a flame that cannot be seen.',
  } as Option,
  tank_volume: {
    ...FLUID,
    symbol: 'V_t',
    title: 'Tank volume',
    doc: 'What the engine can draw from a full tank. Where the design has a tank, laps and race take its usable fuel in place of this.',
    default: 60e-6,
    range: [1e-6, 2e-3],
  } as Field,
  fuel_drawn: {
    ...FLUID,
    symbol: 'V_d',
    title: 'Fuel drawn, measured',
    doc: 'What a flight has drawn from the tank, with a syringe. Takes the laps and the lap time of that flight beside it.',
    default: Number.NaN,
    range: [0.5e-6, 2e-3],
    basis: MEASURED,
    advanced: true,
  } as Field,
  fuel_laps: {
    ...PLAIN,
    symbol: 'N_d',
    title: 'Laps flown on it',
    doc: 'Laps of the flight that drew the fuel, running on the ground counted as laps.',
    default: Number.NaN,
    range: [1, 1000],
    basis: MEASURED,
    advanced: true,
  } as Field,
  fuel_lap_time: {
    dimension: TIME,
    unit: 's',
    symbol: 't_d',
    title: 'Lap time of that flight',
    doc: 'Mean lap of the flight that drew the fuel.',
    default: Number.NaN,
    range: [1, 30],
    basis: MEASURED,
    advanced: true,
  } as Field,
  consumption: {
    dimension: MASS_PER_ENERGY,
    unit: 'g/kWh',
    symbol: 'b',
    title: 'Specific consumption',
    doc: 'Fuel mass for a unit of shaft work, where no draw was measured.',
    default: Number.NaN,
    range: [100 / 3.6e9, 20000 / 3.6e9],
    basis:
      'Glow 3000 g/kWh: 2000 to 6000 from efficiencies of 3 to 9 % measured on small engines (S. Menon and C. P. Cadou), 1200 to 3000 common practice, no source. Diesel 800 g/kWh, a guess without a source.',
    advanced: true,
  } as Field,
  fuel_density: {
    dimension: DENSITY,
    unit: 'g/cm³',
    symbol: 'ρ_f',
    title: 'Fuel density',
    doc: 'Of the mixture with its oil.',
    default: Number.NaN,
    range: [500, 1300],
    basis: 'Glow 0.86 g/cm³, diesel 0.82 g/cm³, from memory.',
    advanced: true,
  } as Field,
} as const;

/** A reason that every engine with a tank has. */
export const fuelReasons = {
  half_measured:
    'A measured draw of fuel needs three numbers: the fuel drawn, the laps flown on it and the lap time of that flight. Type all three, or none.',
} as const;

/** Fuel flow at every airspeed from the power there; gives a reason where the measured draw is incomplete. */
export function writeFuel(
  m: Float64Array,
  f: Columns<typeof fuelFields>,
  r: Columns<typeof engineResults>,
  i: number,
  stride: number,
): 'half_measured' | undefined {
  const facts = FUELS[FUEL_KINDS[m[f.fuel + i]!]!];
  const drawn = m[f.fuel_drawn + i]!;
  const laps = m[f.fuel_laps + i]!;
  const lapTime = m[f.fuel_lap_time + i]!;
  const typed = (Number.isNaN(drawn) ? 0 : 1) + (Number.isNaN(laps) ? 0 : 1) + (Number.isNaN(lapTime) ? 0 : 1);
  if (typed !== 0 && typed !== 3) return 'half_measured';
  const own = m[f.consumption + i]!;
  const consumption = Number.isNaN(own) ? facts.consumption : own;
  const ownDensity = m[f.fuel_density + i]!;
  const density = Number.isNaN(ownDensity) ? facts.density : ownDensity;
  for (let k = 0; k < AIRSPEED_KNOTS.length; k++) {
    const at = k * stride + i;
    m[r.fuel_flow + at] = typed === 3 ? drawn / (laps * lapTime) : fuelFlow(m[r.power + at]!, consumption, density);
    m[r.current + at] = 0;
  }
  m[r.tank_volume + i] = m[f.tank_volume + i]!;
  m[r.pack_charge + i] = 0;
  m[r.flow_spread + i] = typed === 3 || !Number.isNaN(own) ? MEASURED_SPREAD : facts.spread;
  return undefined;
}
