import { unparted } from '../units/index';
import type { Chapter, Piece } from './chapter';

/** A chapter in which no line ends between a number and its unit. */
export const unpartedChapter = (chapter: Chapter): Chapter => ({
  ...chapter,
  pieces: chapter.pieces.map(unpartedPiece),
});

const all = (texts: readonly string[]): readonly string[] => texts.map(unparted);

/** Everything that is read; names and ids stay as they are. */
function unpartedPiece(piece: Piece): Piece {
  switch (piece.kind) {
    case 'text':
    case 'heading':
      return { ...piece, text: unparted(piece.text) };
    case 'list':
      return { ...piece, items: all(piece.items) };
    case 'equation':
      return {
        ...piece,
        title: unparted(piece.title),
        lines: all(piece.lines),
        doc: unparted(piece.doc),
        source: unparted(piece.source),
      };
    case 'entry':
      return {
        ...piece,
        title: unparted(piece.title),
        doc: unparted(piece.doc),
        facts: all(piece.facts),
        notes: all(piece.notes),
      };
    case 'table':
      return { ...piece, title: unparted(piece.title), columns: all(piece.columns), rows: piece.rows.map(all) };
  }
}
