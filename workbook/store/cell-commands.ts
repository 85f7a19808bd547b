import { type Signal, signal } from '@preact/signals';
import { type BlockLinks, type Cell, type Change, copyOfCell, type Document, keptLinks } from '../../engine/index';
import type { Editor } from './editor';

/** A cell that a hand carries to another place. */
export interface Carrying {
  readonly id: string;
  /** Place in the document before which it would be put down. */
  readonly to: number;
}

/** What can be done with whole cells. Each is one edit, but for the signals, which say what the page shows. */
export interface CellCommands {
  /** Place in the document for which the list of what can be added is shown. */
  readonly adding: Signal<number | undefined>;
  /** Id of the cell whose title and name are being edited. */
  readonly naming: Signal<string | undefined>;
  readonly carrying: Signal<Carrying | undefined>;
  /** What the last command did, for people who cannot see it. */
  readonly told: Signal<string>;
  /** Gives the cell that was put in; undefined where nothing may be changed. */
  addCell(at: number, make: (document: Document) => Cell): Cell | undefined;
  /** Puts a copy behind the cell and gives it. */
  copyCell(id: string): Cell | undefined;
  removeCell(id: string): void;
  /** Puts a cell before the one that stands at `to` now. */
  moveCell(id: string, to: number): void;
  fold(cell: Cell, folded: boolean): void;
  /** Shows a folded cell whole because something leads there: nothing to take back. */
  unfold(cell: Cell): void;
}

export interface CellCommandPorts {
  readonly editor: Editor;
  readonly blocks: () => readonly BlockLinks[];
  /** Says what is gone, with a way back. `after`: the document without it. */
  removed(title: string, after: Document): void;
}

export function createCellCommands({ editor, blocks, removed }: CellCommandPorts): CellCommands {
  const told = signal('');
  /** Makes an edit and says it; false where nothing may be changed. */
  const change = (changes: readonly Change[], says: string, done: string): boolean => {
    const before = editor.document.value;
    editor.change(changes, says);
    const made = editor.document.value !== before;
    if (made) told.value = done;
    return made;
  };
  const put = (at: number, cell: Cell, says: string): Cell | undefined => {
    const links = keptLinks(editor.document.value, cell, blocks());
    const done = change([...links, { change: 'insert', at, cell }], says, `Added: ${cell.title}.`);
    return done ? cell : undefined;
  };
  const placeOf = (id: string): number => editor.document.value.cells.findIndex((cell) => cell.id === id);
  return {
    adding: signal(undefined),
    naming: signal(undefined),
    carrying: signal(undefined),
    told,
    addCell(at, make) {
      editor.settle();
      const cell = make(editor.document.value);
      return put(at, cell, `adding ${cell.title}`);
    },
    copyCell(id) {
      editor.settle();
      const { cells } = editor.document.value;
      const at = placeOf(id);
      const cell = cells[at];
      return cell && put(at + 1, copyOfCell(editor.document.value, cell), `copying ${cell.title}`);
    },
    removeCell(id) {
      const cell = editor.document.value.cells[placeOf(id)];
      if (!cell) return;
      const said = `Removed: ${cell.title}.`;
      const made = change([{ change: 'remove', id }], `removing ${cell.title}`, said);
      if (made) removed(said, editor.document.value);
    },
    moveCell(id, to) {
      const at = placeOf(id);
      const cell = editor.document.value.cells[at];
      const last = to > at ? to - 1 : to;
      if (!cell || last === at) return;
      change([{ change: 'move', id, to: last }], `moving ${cell.title}`, `Moved: ${cell.title}.`);
    },
    fold(cell, folded) {
      if (folded === (cell.folded ?? false)) return;
      const made: Change = { change: 'fold', id: cell.id, folded: folded ? true : null };
      editor.change([made], `${folded ? 'folding' : 'unfolding'} ${cell.title}`);
    },
    unfold: (cell) => editor.arrange({ change: 'fold', id: cell.id, folded: null }),
  };
}
