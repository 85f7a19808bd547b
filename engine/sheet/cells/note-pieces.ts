import { unparted } from '../../units/index';

/** A stretch of a note or of a check's reason: words as typed, or a formula whose value stands in its place. */
export type NotePiece = { readonly words: string } | { readonly formula: string };

/** `{flight.pull}` in a note is a formula; `\{` is a brace. A brace that is not closed on its line is words. */
const HOLE = /(\\[\s\S])|\{([^{}\\\n]+)\}/g;

/** Whether a text within braces is read as one formula again. */
export const standsInBraces = (text: string): boolean => /^[^{}\\\n]+$/.test(text);

/** Reads a note into words and formulas, in reading order. */
export function notePieces(text: string): readonly NotePiece[] {
  const pieces: NotePiece[] = [];
  let from = 0;
  for (const match of text.matchAll(HOLE)) {
    if (match[2] === undefined) continue;
    if (match.index > from) pieces.push({ words: text.slice(from, match.index) });
    pieces.push({ formula: match[2] });
    from = match.index + match[0].length;
  }
  if (from < text.length) pieces.push({ words: text.slice(from) });
  return pieces;
}

/** The formulas of a note, in reading order. */
export const noteFormulas = (text: string): readonly string[] =>
  notePieces(text).flatMap((piece) => ('formula' in piece ? [piece.formula] : []));

/** The note with its formulas changed. */
export function withFormulas(text: string, change: (formula: string, index: number) => string): string {
  let k = 0;
  return notePieces(text)
    .map((piece) => ('words' in piece ? piece.words : `{${change(piece.formula, k++)}}`))
    .join('');
}

/** Path of the value of a note's formula: `reading.said1` is the first. */
export const saidPath = (note: string, index: number): string => `${note}.said${index + 1}`;

/** Words with the values of their formulas in place. */
export const filledIn = (text: string, shown: (formula: string, index: number) => string): string => {
  let k = 0;
  const pieces = notePieces(text).map((piece) => ('words' in piece ? piece.words : shown(piece.formula.trim(), k++)));
  return unparted(pieces.join(''));
};
