import type { TextRange } from '../editor/index';

const wanted = new WeakMap<Element, TextRange>();

/** What is to be selected in a place to type in, when it next gets the focus. */
export function wantPlace(field: Element, range: TextRange): void {
  wanted.set(field, range);
}

export function takePlace(field: Element): TextRange | undefined {
  const range = wanted.get(field);
  wanted.delete(field);
  return range;
}
