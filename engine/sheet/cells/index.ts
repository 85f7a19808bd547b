import type { Cell, CellKind } from '../document';
import { bestCell } from './best';
import { blockCell } from './block';
import { chartCell } from './chart';
import { checkCell } from './check';
import { choiceCell } from './choice';
import { drawingCell } from './drawing';
import { fitCell } from './fit';
import { formulaCell } from './formula';
import { guessCell } from './guess';
import type { CellKindOf } from './kind';
import { leversCell } from './levers';
import { logCell } from './log';
import { mendsCell } from './mends';
import { noteCell } from './note';
import { partsCell } from './parts';
import { spreadCell } from './spread';
import { sweepCell } from './sweep';
import { tableCell } from './table';
import { variablesCell } from './variables';
import { variantsCell } from './variants';
import { weighingCell } from './weighing';

/** A cell of one kind. */
type CellOf<K extends CellKind> = Extract<Cell, { readonly kind: K }>;

/** Every kind of cell, once. A new one is added here and nowhere else in this folder; one without its part does not compile. */
const kinds: { readonly [K in CellKind]: CellKindOf<CellOf<K>> } = {
  note: noteCell,
  variables: variablesCell,
  choice: choiceCell,
  formula: formulaCell,
  model: blockCell,
  parts: partsCell,
  drawing: drawingCell,
  trial_series: sweepCell,
  tolerances: spreadCell,
  what_helps: leversCell,
  chart: chartCell,
  table: tableCell,
  check: checkCell,
  log: logCell,
  fit: fitCell,
  variants: variantsCell,
  what_mends: mendsCell,
  best_compromises: bestCell,
  weighing: weighingCell,
  guess: guessCell,
};

export const cellKinds = Object.values(kinds);

/** What the sheet knows of this cell's kind. */
export function kindOf<C extends Cell>(cell: C): CellKindOf<C> {
  // A file may name a kind that there is not.
  return (Object.hasOwn(kinds, cell.kind) ? kinds[cell.kind] : undefined) as unknown as CellKindOf<C>;
}

export const knownKinds = Object.keys(kinds) as readonly CellKind[];

export { axisPath } from './axes';
export { type ChartNeeds, type ChartSource, chartNeeds, chartSource, PART_BARS } from './chart-kinds';
export { reasonPath } from './check';
export { offWith } from './cut-from';
export { fittedResults } from './fit';
export { GUESS_WORDS, guessOptionPath, guessWordsName, MOST_GUESSES } from './guess';
export type { CellKindOf, Rewrite, Text } from './kind';
export { leverPath } from './levers';
export { isLogName, lineSetPath, logErrorPath, logResults, logRowPath, MOST_LOG_ROWS, pullTestPath } from './log';
export { mendPath } from './mends';
export { filledIn, type NotePiece, noteFormulas, notePieces, saidPath } from './note-pieces';
export { isPartField, type PartField, partFields } from './part-fields';
export { numbersKey, OFF_WAYS, offKey } from './part-row';
export { isPartNumber, MOST_SPREAD_SAMPLES, pairPath, spreadPath } from './spread';
export { keptPath } from './table';
export { weighingPaths } from './weighing';
