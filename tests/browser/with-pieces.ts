interface File {
  readonly sheets: readonly { readonly pieces: readonly Piece[] }[];
}
// biome-ignore lint/suspicious/noExplicitAny: pieces of every kind, as a file has them.
type Piece = any;

/** A design as its file has it, with pieces put before the others of its first sheet. */
export function withPieces<F extends File>(design: F, pieces: readonly Piece[]): F {
  const [first, ...others] = design.sheets;
  return { ...design, sheets: [{ ...first!, pieces: [...pieces, ...first!.pieces] }, ...others] };
}

/** Every piece of a design as its file has it. */
export const piecesOf = (design: File): Piece[] => design.sheets.flatMap((sheet) => sheet.pieces);
