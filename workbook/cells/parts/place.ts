import { writeQuantity } from '../../../engine/index';
import type { Place } from '../../drawing/index';

/** A press this near to the centreline or the reference line means the line itself, pixels. */
const SNAP = 3;

/** The texts of a part that stands where somebody pressed, in whole millimetres: finer than a hand can point. */
export function placeTexts(path: string, place: Place, metresPerPixel: number): (readonly [string, string])[] {
  return Object.entries(place).map(([axis, metres]) => {
    const onLine = axis !== 'x' && Math.abs(metres) <= SNAP * metresPerPixel;
    const millimetres = onLine ? 0 : Math.round(metres * 1000);
    return [`${path}.${axis}`, writeQuantity(millimetres / 1000, 'mm')] as const;
  });
}
