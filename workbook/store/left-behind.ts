import { openText, serialise } from '../../engine/index';
import { inTab } from './in-tab';
import type { Keeper } from './keep/index';
import type { Sheet } from './sheet';

type Open = Pick<Sheet, 'document' | 'settle' | 'replace'>;

/** Where a tab remembers what it had no time to keep. */
const NOTE = 'tetherwright left behind';

/** The design before and after what was being typed, as texts of files. */
interface Note {
  readonly before: string;
  readonly after: string;
}

/**
 * Makes an edit of what is being typed or dragged. The store is too slow for a page that is about to go, so the tab remembers
 * the edit until it is stored.
 */
export function settleAndRemember(sheet: Open, keeper: Pick<Keeper, 'stored'>): void {
  const before = sheet.document.peek();
  sheet.settle();
  const after = sheet.document.peek();
  if (before === after) return;
  const note: Note = { before: serialise(before), after: serialise(after) };
  inTab((memory) => memory.setItem(NOTE, JSON.stringify(note)));
  void keeper.stored().then(() => inTab((memory) => memory.removeItem(NOTE)));
}

/** Makes the edit that a page left behind, if the design is the one in which it was made. */
export function takeUpWhatWasLeft(sheet: Open): void {
  const note = read(inTab((memory) => memory.getItem(NOTE)) ?? null);
  inTab((memory) => memory.removeItem(NOTE));
  if (note?.before !== serialise(sheet.document.peek())) return;
  const opened = openText(note.after);
  if (opened.ok) sheet.replace(opened.document, 'what was being typed');
}

function read(text: string | null): Note | undefined {
  if (text === null) return undefined;
  try {
    return JSON.parse(text) as Note;
  } catch {
    return undefined;
  }
}
