import { type Document, textAt } from '../../engine/index';

/** A text that the baseline has otherwise. */
export interface Difference {
  readonly path: string;
  readonly before: string;
  readonly now: string;
}

/** Every text that differs from the baseline, in the order in which they moved away; what is gone since is passed over. */
export function differencesOf(document: Document): readonly Difference[] {
  return Object.entries(document.baseline ?? {}).flatMap(([path, before]) => {
    const now = textAt(document, path);
    return now === undefined ? [] : [{ path, before, now }];
  });
}
