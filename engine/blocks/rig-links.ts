import type { Result } from './block';
import { METRES, MILLIMETRES, NEWTONS } from './measures';

/** What balance and ballast read of the leadouts. */
export const leadoutsRead = {
  guide_x: { ...MILLIMETRES, symbol: 'x_g', title: 'Guide', doc: 'Aft of the wing root leading edge.' },
  guide_y: { ...MILLIMETRES, symbol: 'y_g', title: 'Guide from centreline', doc: 'Outboard positive.' },
  front_x: { ...MILLIMETRES, symbol: 'x_f', title: 'Front leadout', doc: 'Aft of the wing root leading edge.' },
} as const satisfies Readonly<Record<string, Result>>;

/** What ballast reads of the lines. */
export const linesRead = {
  guide_radius: { ...METRES, symbol: 'R_g', title: 'Radius to the guide', doc: 'From the pilot’s axis.' },
  weight: { ...NEWTONS, symbol: 'W_l', title: 'Weight of the lines', doc: 'Of all lines together.' },
} as const satisfies Readonly<Record<string, Result>>;
