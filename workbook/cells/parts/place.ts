import { shownUnit, type UnitSet, writeQuantity } from '../../../engine/index';
import { type Place, pointingStep } from '../../drawing/index';

/** A press this near to the centreline or the reference line means the line itself, pixels. */
const SNAP = 3;

/** The texts of a part that stands where somebody pressed, as fine as a hand can point: whole millimetres, twentieths of an inch. */
export function placeTexts(
  path: string,
  place: Place,
  metresPerPixel: number,
  set: UnitSet,
): (readonly [string, string])[] {
  const unit = shownUnit('mm', set);
  const step = pointingStep(set);
  return Object.entries(place).map(([axis, metres]) => {
    const onLine = axis !== 'x' && Math.abs(metres) <= SNAP * metresPerPixel;
    return [`${path}.${axis}`, writeQuantity(onLine ? 0 : Math.round(metres / step) * step, unit)] as const;
  });
}
