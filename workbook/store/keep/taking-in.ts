import { type Document, openText, serialise } from '../../../engine/index';
import type { Design } from './database';

/** What becomes of a design that comes in: kept as it is, kept under another title, or here already. */
export interface TakenIn {
  readonly as: 'new' | 'renamed' | 'here';
  /** As it is kept, or as it is here. */
  readonly document: Document;
  /** As the file calls it. */
  readonly title: string;
}

/** How each design comes to stand beside those that are kept, in their order: nothing takes the place of anything. */
export function takingIn(kept: readonly Design[], coming: readonly Document[]): readonly TakenIn[] {
  const here = kept.flatMap(({ deleted, text }) => {
    const opened = deleted === undefined ? openText(text) : undefined;
    return opened?.ok ? [opened.document] : [];
  });
  return coming.map((design) => {
    const { title } = design;
    const same = here.find((each) => isOfTitle(each.title, title) && sameButTitle(each, design));
    if (same) return { as: 'here', document: same, title };
    const document = { ...design, title: freeTitle(title, here) };
    here.push(document);
    return { as: document.title === title ? 'new' : 'renamed', document, title };
  });
}

/** Titles that a person takes for the same. */
export const titleKey = (title: string): string => title.trim().toLowerCase();

/** “Barn owl” and “Barn owl, 2”, which it was called to be kept apart. */
function isOfTitle(kept: string, title: string): boolean {
  const stem = `${stemOf(title)}, `;
  return titleKey(kept) === titleKey(title) || (kept.startsWith(stem) && /^\d+$/.test(kept.slice(stem.length)));
}

const stemOf = (title: string): string => title || 'Untitled design';

const sameButTitle = (a: Document, b: Document): boolean =>
  serialise({ ...a, title: '' }) === serialise({ ...b, title: '' });

function freeTitle(title: string, here: readonly Document[]): string {
  const taken = new Set(here.map((each) => titleKey(each.title)));
  let free = title;
  for (let k = 2; taken.has(titleKey(free)); k++) free = `${stemOf(title)}, ${k}`;
  return free;
}
