import type { NameInfo } from '../../../engine/index';

const PART_WORDS: Readonly<Record<string, string>> = { mass: 'weight' };

/** What a thing that differs is called; the mass of a part is called as the part is, so its weight is said. */
export function titleOfRow(of: string, info: NameInfo | undefined): string {
  const title = info?.title ?? of;
  const word = info?.kind === 'part' ? PART_WORDS[of.slice(of.lastIndexOf('.') + 1)] : undefined;
  return word === undefined ? title : `${title}: ${word}`;
}
