import type { Place, PlacedPart } from '../../drawing/index';
import type { Sheet } from '../../store/sheet';
import { placeTexts } from '../parts/place';
import { setBy } from './placed-parts';

/**
 * The texts of a part that is dragged to a place: each length that can be set, where it is set, and no further than its slide goes.
 * None where it can't be moved in that view.
 */
export function movedTexts(sheet: Sheet, part: PlacedPart, place: Place, metresPerPixel: number): Map<string, string> {
  const kept = new Map<string, string>();
  for (const [axis, metres] of Object.entries(place) as [keyof PlacedPart['at'], number][]) {
    const by = setBy(sheet, `${part.path}.${axis}`);
    if (by === undefined) continue;
    const [low, high] = [sheet.value(`${by}.low`), sheet.value(`${by}.high`)];
    const within = Math.min(
      Math.max(metres, Number.isNaN(low) ? -Infinity : low),
      Number.isNaN(high) ? Infinity : high,
    );
    const [, text] = placeTexts('', { [axis]: within } as unknown as Place, metresPerPixel, sheet.units())[0]!;
    kept.set(by, text);
  }
  return kept;
}
