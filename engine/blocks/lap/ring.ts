import type { TraceQuantity } from '../block';
import { AIRSPEED, ANGLE, NEWTONS } from '../measures';

/** What runs around a lap; the first runs along. */
export const ringColumns = {
  azimuth: {
    ...ANGLE,
    symbol: 'θ_a',
    title: 'Azimuth',
    doc: 'From straight downwind of the pilot, in the direction of flight.',
  },
  pull: { ...NEWTONS, symbol: 'T', title: 'Line pull', doc: 'Of all lines at the model.' },
  speed: { ...AIRSPEED, symbol: 'V', title: 'Speed', doc: 'Over the ground.' },
  nose_out: {
    ...ANGLE,
    symbol: 'ψ',
    title: 'Nose angle',
    ways: ['out', 'in', 'straight'],
    doc: 'From the path over the ground.',
  },
  outboard_low: {
    ...ANGLE,
    symbol: 'δ',
    title: 'Outboard wing',
    ways: ['low', 'high', 'level'],
    doc: 'From the chord.',
  },
  bearing: { ...ANGLE, symbol: 'β', title: 'Bearing', doc: 'Compass bearing from the pilot to the model.' },
} as const satisfies Readonly<Record<string, TraceQuantity>>;
