import type { Cell, CellKind } from '../document';
import { blockCell } from './block';
import { chartCell } from './chart';
import { checkCell } from './check';
import { choiceCell } from './choice';
import { drawingCell } from './drawing';
import { fitCell } from './fit';
import { formulaCell } from './formula';
import type { CellKindOf } from './kind';
import { leversCell } from './levers';
import { logCell } from './log';
import { noteCell } from './note';
import { partsCell } from './parts';
import { spreadCell } from './spread';
import { sweepCell } from './sweep';
import { tableCell } from './table';
import { variablesCell } from './variables';

/** Every kind of cell, once. A new one is added here and nowhere else in this folder. */
export const cellKinds = [
  noteCell,
  variablesCell,
  choiceCell,
  formulaCell,
  blockCell,
  partsCell,
  drawingCell,
  sweepCell,
  spreadCell,
  leversCell,
  chartCell,
  tableCell,
  checkCell,
  logCell,
  fitCell,
] as const;

const byKind = new Map<string, unknown>(cellKinds.map((kind) => [kind.kind, kind]));

/** What the sheet knows of this cell's kind. */
export function kindOf<C extends Cell>(cell: C): CellKindOf<C> {
  return byKind.get(cell.kind) as CellKindOf<C>;
}

export const knownKinds: readonly CellKind[] = cellKinds.map((kind) => kind.kind);

export { type ChartNeeds, type ChartSource, chartNeeds, chartSource, PART_BARS } from './chart-kinds';
export { cutFrom } from './cut-from';
export { fittedResults } from './fit';
export type { CellKindOf, Rewrite, Text } from './kind';
export { leverPath } from './levers';
export { logErrorPath, logResults, logRowPath, MOST_LOG_ROWS } from './log';
export { type NotePiece, noteFormulas, notePieces, saidPath } from './note-pieces';
export { isPartField, type PartField, partFields } from './part-fields';
export { numbersKey, OFF_WAYS, offKey } from './part-row';
export { isPartNumber, MOST_SPREAD_SAMPLES, pairPath, spreadPath } from './spread';
export { axisPath } from './sweep';
export { keptPath } from './table';
