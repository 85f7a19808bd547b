import { lapsPerFilling } from '../../physics/index';
import type { Columns, Field, Result } from '../block';
import { FLUID, PLAIN, typedOr } from '../measures';
import type { flightLinks } from './fields';
import type { flightResults } from './results';

/** The tank that the design has, if it has one. */
export const fillingFields = {
  tank: { link: 'tank', optional: true, doc: 'The usable fuel of a filling, unless typed.' },
  filling: {
    ...FLUID,
    symbol: 'V_1',
    title: 'Usable fuel of a filling',
    doc: 'What the engine draws from a filled tank until it runs dry.',
    default: Number.NaN,
    range: [1e-6, 2e-3],
    taken: 'tank.usable',
    basis: 'Tank volume of the engine.',
    advanced: true,
  } as Field,
} as const;

/** How long a filling lasts: found after the tank, which needs the flight. */
export const fillingResults = {
  laps_per_filling: {
    ...PLAIN,
    symbol: 'N_f',
    title: 'Laps on a tank or charge',
    doc: 'In level flight from start to stop, running on the ground counted as laps. A guess within a factor of two unless the use of a flight was measured.',
  },
  laps_per_filling_low: {
    ...PLAIN,
    symbol: 'N_f1',
    title: 'Fewest laps on a tank or charge',
    doc: 'If the engine uses as much as it may.',
    detail: true,
  },
  laps_per_filling_high: {
    ...PLAIN,
    symbol: 'N_f2',
    title: 'Most laps on a tank or charge',
    doc: 'If the engine uses as little as it may.',
    detail: true,
  },
} as const satisfies Readonly<Record<string, Result>>;

type Fields = Columns<typeof flightLinks & typeof fillingFields>;
type Results = Columns<typeof flightResults & typeof fillingResults>;

export function writeLaps(m: Float64Array, f: Fields, r: Results, i: number): void {
  const { engine } = f;
  const fuel = m[r.fuel_per_lap + i]!;
  const filled = typedOr(m[f.filling + i]!, m[engine.tank_volume + i]!);
  const laps = lapsPerFilling(filled, fuel, m[engine.pack_charge + i]!, m[r.charge_per_lap + i]!);
  const spread = m[engine.flow_spread + i]!;
  m[r.laps_per_filling + i] = laps;
  m[r.laps_per_filling_low + i] = laps / spread;
  m[r.laps_per_filling_high + i] = laps * spread;
}
