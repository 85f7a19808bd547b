import type { Sheet } from '../../store/sheet';
import { addBehind, goToPiece, goToSheet } from './moves';

/** A key that the page takes wherever the focus is, but in a dialog. */
export interface PageKey {
  readonly key: string;
  readonly alt?: boolean;
  readonly shift?: boolean;
  /** The key as it is called. */
  readonly words: string;
  readonly does: string;
  run(sheet: Sheet): void;
}

/** Function keys that browsers and screen readers leave alone, and Page Down and Page Up with Alt, which no text takes. */
export const pageKeys: readonly PageKey[] = [
  {
    key: 'F8',
    words: 'F8',
    does: 'Go to a sheet, a piece, a variable or a command: a few letters of it are enough.',
    run(sheet) {
      sheet.asking.value = 'where';
    },
  },
  { key: 'F8', shift: true, words: 'Shift F8', does: 'Add a piece behind the one that you are at.', run: addBehind },
  { key: 'F2', words: 'F2', does: 'Save the design to a file.', run: (sheet) => sheet.save() },
  { key: 'PageDown', alt: true, words: 'Alt Page Down', does: 'The next piece.', run: (sheet) => goToPiece(sheet, 1) },
  { key: 'PageUp', alt: true, words: 'Alt Page Up', does: 'The piece before.', run: (sheet) => goToPiece(sheet, -1) },
  {
    ...{ key: 'PageDown', alt: true, shift: true },
    words: 'Alt Shift Page Down',
    does: 'The next sheet.',
    run: (sheet) => goToSheet(sheet, 1),
  },
  {
    ...{ key: 'PageUp', alt: true, shift: true },
    words: 'Alt Shift Page Up',
    does: 'The sheet before.',
    run: (sheet) => goToSheet(sheet, -1),
  },
];

/** What keys do at a place of their own. */
export const placeKeys: readonly (readonly [words: string, does: string])[] = [
  ['Tab', 'The next entry, slide or chart. The words of a piece, a bar or a list are one stop.'],
  ['Arrow keys on a word', 'Along the words of that piece, bar or list; Home and End lead to the first and the last.'],
  ['Enter on a number in a circle', 'What can be done with that piece: open it, move it, copy it, remove it.'],
  ['Enter on the title of a number', 'Make a chart of it, or a variable.'],
  ['Arrow keys on a slide', 'A step down or up.'],
  ['Arrow keys on a chart', 'Read it point by point; with Shift the present design moves.'],
  ['Enter, Escape in an entry', 'Keep what is typed, or leave it as it was.'],
  ['Down arrow in a formula', 'Names with their values. F1 says what a word is.'],
  ['Letters in a list to pick from', 'Narrow it; arrows go through it, Enter takes one.'],
  ['Control Z', 'Take the last step back; with Shift do it again.'],
];
