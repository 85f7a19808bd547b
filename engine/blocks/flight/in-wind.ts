import type { SetupRoom } from '../../physics/index';
import type { Columns } from '../block';
import { flightLinks } from './fields';
import { flightResults } from './results';
import { readSetup } from './setup';

/** What flies in wind is linked to: all of level flight, and level flight itself. */
export const windLinks = {
  ...flightLinks,
  flight: {
    link: 'flight',
    results: flightResults,
    doc: 'Level flight in calm air: height, direction, and what it starts from.',
  },
} as const;

/** The set-up of the linked level flight, into `setup`. */
export function setupInWind(
  m: Float64Array,
  f: Columns<typeof windLinks>,
  i: number,
  stride: number,
  setup: SetupRoom,
): void {
  readSetup(m, f, f.flight, i, stride, setup);
}
