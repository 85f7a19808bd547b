import { computed, type ReadonlySignal, signal } from '@preact/signals';
import {
  type BlockLinks,
  type Cell,
  type Change,
  type CheckCell,
  cellsOf,
  copyingSheet,
  type Sheet as DesignSheet,
  type Document,
  type Fault,
  freeSheetId,
  type NameInfo,
  sheetOfPiece,
  sheetRemoval,
  sheetWith,
} from '../../engine/index';
import { byPath, steadyList } from './by-path';
import type { Editor } from './editor';
import { type SheetState, sheetState } from './sheet-state';
import { lastShown, rememberShown } from './shown-in-tab';

/** A sheet of the set as a list of them tells it. */
export interface SheetTold {
  readonly id: string;
  /** Counted from 1. */
  readonly number: number;
  readonly title: string;
  readonly pieces: number;
  readonly state: SheetState;
}

/** The sheets of the open design: which one is shown, and what can be done with each. Every command is one edit. */
export interface SheetSet {
  /** Every piece of the design in reading order. */
  readonly cells: ReadonlySignal<readonly Cell[]>;
  /** The sheet that is shown. */
  readonly shownSheet: ReadonlySignal<DesignSheet>;
  /** In order; the same list as long as nothing in it is another. */
  readonly sheetList: ReadonlySignal<readonly SheetTold[]>;
  showSheet(id: string): void;
  /** Shows the sheet on which a piece stands. */
  showSheetOf(piece: string): void;
  /** Puts an empty sheet behind the shown one, shows it and gives its id; undefined where nothing may be changed. */
  addSheet(title: string): string | undefined;
  titleSheet(id: string, title: string): void;
  /** Puts a copy behind the last sheet and shows it. */
  copySheet(id: string): void;
  /** To a place counted without the sheet itself. */
  moveSheet(id: string, to: number): void;
  /** The last sheet of a design stays: then nothing is done. */
  removeSheet(id: string): void;
}

export interface SheetSetPorts {
  readonly editor: Editor;
  readonly blocks: () => readonly BlockLinks[];
  readonly faults: () => readonly Fault[];
  /** Checks whose value is beyond a limit. */
  /** Checks that are broken, results that are too low without one, and checks that have no limit. */
  readonly stopped: () => Readonly<Record<'stops' | 'unlimited', readonly CheckCell[]>> & {
    readonly breaches: readonly Pick<NameInfo, 'cell'>[];
  };
  /** Something is under way, so that no state is known. */
  readonly working: () => boolean;
  /** Says what is gone, with a way back. `after`: the document without it. */
  removed(title: string, after: Document): void;
}

export function createSheetSet({ editor, blocks, faults, stopped, working, removed }: SheetSetPorts): SheetSet {
  const { document } = editor;
  /** The sheet that was asked for, and where it stood: the one in its place is shown when it is gone. */
  const asked = signal(placeFor(document.peek(), lastShown()));
  const shownSheet = computed(() => {
    const { sheets } = document.value;
    const { id, at } = asked.value;
    return sheets.find((sheet) => sheet.id === id) ?? sheets[Math.min(at, sheets.length - 1)]!;
  });
  const showSheet = (id: string): void => {
    const at = document.peek().sheets.findIndex((sheet) => sheet.id === id);
    if (at < 0) return;
    asked.value = { id, at };
    rememberShown(id);
  };
  const told = byPath((id) => {
    const sheet = sheetWith(document.value, id);
    const here = new Set(sheet?.pieces.map((piece) => piece.id));
    const { stops, breaches, unlimited } = stopped();
    const countHere = (list: readonly CheckCell[]): number => list.filter((check) => here.has(check.id)).length;
    return JSON.stringify(
      sheetState(
        faults().filter((fault) => here.has(fault.cell)),
        countHere(stops) + breaches.filter(({ cell }) => here.has(cell)).length,
        working(),
        countHere(unlimited),
      ),
    );
  });
  const tellings = new Map<string, SheetTold>();
  const sheetList = steadyList(() =>
    document.value.sheets.map(({ id, title, pieces }, k): SheetTold => {
      const now = { id, number: k + 1, title, pieces: pieces.length, state: JSON.parse(told(id)) as SheetState };
      const before = tellings.get(id);
      if (before && JSON.stringify(before) === JSON.stringify(now)) return before;
      tellings.set(id, now);
      return now;
    }),
  );
  const change = (made: Change, says: string): boolean => {
    const before = document.peek();
    editor.change([made], says);
    return document.peek() !== before;
  };
  return {
    cells: computed(() => cellsOf(document.value)),
    shownSheet,
    sheetList,
    showSheet,
    showSheetOf(piece) {
      const sheet = sheetOfPiece(document.peek(), piece);
      if (sheet) showSheet(sheet.id);
    },
    addSheet(title) {
      editor.settle();
      const id = freeSheetId(document.peek());
      const at = document.peek().sheets.indexOf(shownSheet.peek()) + 1;
      const made: Change = { change: 'insert_sheet', at, sheet: { id, title, pieces: [] } };
      if (!change(made, `adding the sheet ${title}`)) return undefined;
      showSheet(id);
      return id;
    },
    titleSheet(id, title) {
      if (sheetWith(document.peek(), id)?.title === title) return;
      change({ change: 'title_sheet', id, title }, 'the title of a sheet');
    },
    copySheet(id) {
      editor.settle();
      const now = document.peek();
      const sheet = sheetWith(now, id);
      if (!sheet) return;
      editor.change(copyingSheet(now, now, id, blocks()), `copying the sheet ${sheet.title}`);
      if (document.peek() !== now) showSheet(document.peek().sheets.at(-1)!.id);
    },
    moveSheet(id, to) {
      const at = document.peek().sheets.findIndex((sheet) => sheet.id === id);
      if (at < 0 || at === to) return;
      change({ change: 'move_sheet', id, to }, `moving the sheet ${document.peek().sheets[at]!.title}`);
      showSheet(shownSheet.peek().id);
    },
    removeSheet(id) {
      const sheet = sheetWith(document.peek(), id);
      if (!sheet || document.peek().sheets.length === 1) return;
      // Where it stood has to be known for what is shown in its place.
      if (shownSheet.peek().id === id) showSheet(id);
      const before = document.peek();
      editor.change(sheetRemoval(before, id), `removing the sheet ${sheet.title}`);
      if (document.peek() !== before) removed(`Removed: sheet ${sheet.title}.`, document.peek());
    },
  };
}

/** Where the sheet with this id stands, or else the first. */
function placeFor({ sheets }: Document, id: string | undefined): { readonly id: string; readonly at: number } {
  const at = Math.max(
    sheets.findIndex((sheet) => sheet.id === id),
    0,
  );
  return { id: sheets[at]!.id, at };
}
