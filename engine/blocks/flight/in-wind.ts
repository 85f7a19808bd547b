import type { FlightSetup } from '../../physics/index';
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

/** The set-up of the linked level flight. */
export function setupInWind(m: Float64Array, f: Columns<typeof windLinks>, i: number, stride: number): FlightSetup {
  const { height, handle_height, direction, rotation, gravity, drag_factor } = f.flight;
  return readSetup(m, { ...f, height, handle_height, direction, rotation, gravity, drag_factor }, i, stride);
}
