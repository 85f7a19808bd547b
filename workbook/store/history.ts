import type { Change } from '../../engine/index';

/** One thing that a person did: the changes it made and those that take it back. */
export interface Edit {
  /** What was edited, in the words of the sheet; said beside Undo and Redo. */
  readonly says: string;
  readonly changes: readonly Change[];
  /** In the order in which they have to be applied. */
  readonly inverse: readonly Change[];
  /** Edits of one key that follow each other closely are one step (an arrow key held down). */
  readonly key?: string;
  /** It put one design of this machine in place of another. */
  readonly opens?: { readonly from: string; readonly to: string };
  /** Milliseconds, any origin. */
  readonly at: number;
}

export interface History {
  readonly past: readonly Edit[];
  readonly future: readonly Edit[];
}

export const noHistory: History = { past: [], future: [] };

/** Steps kept; each is some hundred bytes. */
const LONGEST = 500;
/** Longest pause between two edits that still count as one, ms. */
const PAUSE = 800;

export function record(history: History, edit: Edit): History {
  const last = history.past.at(-1);
  const joins = last?.key !== undefined && last.key === edit.key && edit.at - last.at <= PAUSE;
  const past = joins ? [...history.past.slice(0, -1), { ...edit, inverse: last.inverse }] : [...history.past, edit];
  return { past: past.slice(-LONGEST), future: [] };
}

/** The history after the last edit is taken back, and that edit. */
export function stepBack(history: History): { history: History; edit: Edit } | undefined {
  const edit = history.past.at(-1);
  if (!edit) return undefined;
  return { edit, history: { past: history.past.slice(0, -1), future: [edit, ...history.future] } };
}

export function stepForward(history: History): { history: History; edit: Edit } | undefined {
  const [edit, ...future] = history.future;
  if (!edit) return undefined;
  return { edit, history: { past: [...history.past, { ...edit, key: undefined }], future } };
}
