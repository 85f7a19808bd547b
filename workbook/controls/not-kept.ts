import type { Sheet } from '../store/sheet';

/** Longer texts are cut where they are said to be gone. */
const LONGEST = 40;

/** Says that a text was typed and not kept, with a way back as long as nothing else is done. */
export function tellNotKept(sheet: Sheet, typed: string, keep: (text: string) => void): void {
  const text = typed.trim();
  if (text === '') return;
  const said = text.length > LONGEST ? `${text.slice(0, LONGEST).trimEnd()} …` : text;
  const title = `Not kept: \u201c${said}\u201d`;
  sheet.tell({ title, sentences: [], after: sheet.document.peek(), restore: () => keep(text) });
}
