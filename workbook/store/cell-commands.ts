import { type Signal, signal } from '@preact/signals';
import {
  type BlockLinks,
  type Cell,
  type Change,
  copyOfCell,
  type Document,
  keptLinks,
  placeOf,
  sheetOfPiece,
} from '../../engine/index';
import type { Editor } from './editor';

/** A cell that a hand carries to another place. */
interface Carrying {
  readonly id: string;
  /** Place on the shown sheet before which it would be put down; −1 where it is over no place of it. */
  readonly to: number;
  /** Id of the sheet onto whose line in the list it would be put. */
  readonly onto?: string;
}

/** What can be done with whole cells. Each is one edit, but for the signals, which say what the page shows. */
export interface CellCommands {
  /** Place on the shown sheet for which the list of what can be added is shown. */
  readonly adding: Signal<number | undefined>;
  /** Id of the cell whose title and name are being edited. */
  readonly naming: Signal<string | undefined>;
  /** Id of the cell for which the list of sheets is shown that it can go to. */
  readonly placing: Signal<string | undefined>;
  readonly carrying: Signal<Carrying | undefined>;
  /** What the last command did, for people who cannot see it. */
  readonly told: Signal<string>;
  /** On the shown sheet. Gives the cell that was put in; undefined where nothing may be changed. */
  addCell(at: number, make: (document: Document) => Cell): Cell | undefined;
  /** Puts a copy behind the cell and gives it. */
  copyCell(id: string): Cell | undefined;
  removeCell(id: string): void;
  /** Puts a cell before the one that stands at `to` of its sheet now. */
  moveCell(id: string, to: number): void;
  /** Puts a cell on another sheet, at the end unless a place is said. */
  moveToSheet(id: string, sheet: string, to?: number): void;
  fold(cell: Cell, folded: boolean): void;
  /** Shows a folded cell whole because something leads there: nothing to take back. */
  unfold(cell: Cell): void;
}

export interface CellCommandPorts {
  readonly editor: Editor;
  readonly blocks: () => readonly BlockLinks[];
  /** Id of the sheet that is shown. */
  readonly shown: () => string;
  /** Says what is gone, with a way back. `after`: the document without it. */
  removed(title: string, after: Document): void;
}

export function createCellCommands({ editor, blocks, shown, removed }: CellCommandPorts): CellCommands {
  const told = signal('');
  /** Makes an edit and says it; false where nothing may be changed. */
  const change = (changes: readonly Change[], says: string, done: string): boolean => {
    const before = editor.document.value;
    editor.change(changes, says);
    const made = editor.document.value !== before;
    if (made) told.value = done;
    return made;
  };
  const put = (sheet: string, at: number, cell: Cell, says: string): Cell | undefined => {
    const links = keptLinks(editor.document.value, cell, blocks());
    const done = change([...links, { change: 'insert', sheet, at, cell }], says, `Added: ${cell.title}.`);
    return done ? cell : undefined;
  };
  /** A cell with the sheet that it stands on and its place there. */
  const found = (id: string) => {
    const sheet = sheetOfPiece(editor.document.value, id);
    const at = placeOf(editor.document.value, id)?.at ?? -1;
    const cell = sheet?.pieces[at];
    return sheet && cell && { sheet, at, cell };
  };
  return {
    adding: signal(undefined),
    naming: signal(undefined),
    placing: signal(undefined),
    carrying: signal(undefined),
    told,
    addCell(at, make) {
      editor.settle();
      const cell = make(editor.document.value);
      return put(shown(), at, cell, `adding ${cell.title}`);
    },
    copyCell(id) {
      editor.settle();
      const of = found(id);
      if (!of) return undefined;
      const copy = copyOfCell(editor.document.value, of.cell);
      return put(of.sheet.id, of.at + 1, copy, `copying ${of.cell.title}`);
    },
    removeCell(id) {
      const cell = found(id)?.cell;
      if (!cell) return;
      const said = `Removed: ${cell.title}.`;
      const made = change([{ change: 'remove', id }], `removing ${cell.title}`, said);
      if (made) removed(said, editor.document.value);
    },
    moveCell(id, to) {
      const of = found(id);
      if (!of) return;
      const last = to > of.at ? to - 1 : to;
      if (last === of.at) return;
      const { title } = of.cell;
      change([{ change: 'move', id, sheet: of.sheet.id, to: last }], `moving ${title}`, `Moved: ${title}.`);
    },
    moveToSheet(id, sheet, to) {
      const of = found(id);
      const target = editor.document.value.sheets.find((each) => each.id === sheet);
      if (!of || !target || of.sheet === target) return;
      const { title } = of.cell;
      const move: Change = { change: 'move', id, sheet, to: to ?? target.pieces.length };
      const said = `Moved: ${title}, to ${target.title}.`;
      const made = change([move], `moving ${title} to ${target.title}`, said);
      if (made && of.sheet.id === shown()) removed(said, editor.document.value);
    },
    fold(cell, folded) {
      if (folded === (cell.folded ?? false)) return;
      const made: Change = { change: 'fold', id: cell.id, folded: folded ? true : null };
      editor.change([made], `${folded ? 'folding' : 'unfolding'} ${cell.title}`);
    },
    unfold: (cell) => editor.arrange({ change: 'fold', id: cell.id, folded: null }),
  };
}
