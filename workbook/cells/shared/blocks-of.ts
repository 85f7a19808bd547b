import { type BlockCell, cellsOf, type Document } from '../../../engine/index';

/** The pieces of the model of one kind. */
export const blocksOf = (document: Document, kind: string): readonly BlockCell[] =>
  cellsOf(document).filter((cell): cell is BlockCell => cell.kind === 'model' && cell.of === kind);
