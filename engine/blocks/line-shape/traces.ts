import type { Quantity } from '../block';
import { ANGLE, METRES, MILLIMETRES, NEWTONS } from '../measures';

/** What runs along the lines; the first runs along. */
export const lineColumns = {
  distance: { ...METRES, symbol: 's', title: 'Along the line', doc: 'From the handle.' },
  radius: { ...METRES, symbol: 'r', title: 'Radius', doc: 'Level, from the axis about which the pilot turns.' },
  height: { ...METRES, symbol: 'z', title: 'Height', doc: 'Above the pilot’s end of the slant through the guide.' },
  behind: {
    ...MILLIMETRES,
    symbol: 'y',
    title: 'Behind the radius',
    doc: 'Behind the radius from the pilot’s axis to the guide, against the way of flight.',
  },
  back: { ...MILLIMETRES, symbol: 'b', title: 'Bow back', doc: 'Behind the straight line from handle to guide.' },
  down: { ...MILLIMETRES, symbol: 'd', title: 'Bow down', doc: 'Below the straight line from handle to guide.' },
  trail: {
    ...ANGLE,
    symbol: 'ε_s',
    title: 'Trail',
    doc: 'How far the line points ahead of the radius through its place.',
  },
  slope: { ...ANGLE, symbol: 'φ_s', title: 'Slope', doc: 'How steeply the line rises outward.' },
  tension: { ...NEWTONS, symbol: 'T_s', title: 'Tension', doc: 'Of all lines together.' },
} as const satisfies Readonly<Record<string, Quantity>>;
