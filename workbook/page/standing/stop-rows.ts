import type { CheckCell } from '../../../engine/index';
import { underWords, verdict } from '../../cells/index';
import type { Place } from '../../controls/go-to';
import type { Sheet } from '../../store/sheet';

/** How a check or a result stands, with the way to it. */
export interface StopRow {
  readonly place: Place;
  readonly title: string;
  readonly words: string;
  /** It waits for the hand to rest, and stands as it did before. */
  readonly behind: boolean;
}

export function checkRow(check: CheckCell, sheet: Pick<Sheet, 'besideOf'>): StopRow {
  const { reader, behind } = sheet.besideOf(check);
  return {
    ...{ place: { cell: check.id, path: check.name }, title: check.title },
    ...{ words: verdict(check, reader).words, behind },
  };
}

/** All that is broken: checks beyond a limit, then results that no check watches and that are under what they may be. */
export const stopRows = (sheet: Pick<Sheet, 'stops' | 'breaches' | 'beside' | 'besideOf'>): readonly StopRow[] => [
  ...sheet.stops.value.map((check) => checkRow(check, sheet)),
  ...sheet.breaches.value.map((info): StopRow => {
    const { reader, behind } = sheet.beside([info.path]);
    return { place: info, title: info.title, words: underWords(info, reader), behind };
  }),
];
