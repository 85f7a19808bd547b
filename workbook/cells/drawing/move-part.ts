import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import type { PartsHand, Place, PlacedPart } from '../../drawing/index';
import { useSheet } from '../../store/context';
import type { Sheet } from '../../store/sheet';
import { placeTexts } from '../parts/place';
import { partWords, setBy } from './placed-parts';

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

/** A hand that moves parts of the open sheet: what it moves until it rests is one step. */
export function usePartsHand(): PartsHand {
  const sheet = useSheet();
  const taken = useSignal<string | undefined>(undefined);
  return useMemo(
    () => ({
      taken,
      words: (part) => partWords(sheet, part),
      move(part, place, metresPerPixel) {
        const texts = movedTexts(sheet, part, place, metresPerPixel);
        if (texts.size > 0) sheet.dragTexts(texts, `place of ${part.title}`);
      },
      rest: sheet.rest,
    }),
    [sheet, taken],
  );
}
