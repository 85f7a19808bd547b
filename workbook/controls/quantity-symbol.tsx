/** Letters, and after an underscore what stands as their index: "F_t/T" is F with the index t, over T. */
const PIECE = /_([\p{L}\p{N},½]+)|([^_]+)/gu;

/** A quantity's symbol, set in italics as formulas are. The name beside it says the same in words. */
export function QuantitySymbol({ of }: { of: string }) {
  return (
    <span class="symbol" aria-hidden="true">
      {[...of.matchAll(PIECE)].map(([piece, index, letters]) =>
        index === undefined ? <i key={piece}>{breakable(letters!)}</i> : <sub key={piece}>{index}</sub>,
      )}
    </span>
  );
}

/** A ratio may go on in a second line, before what it's over. */
const breakable = (letters: string) =>
  letters.split(/(?=\/)/).flatMap((part) => (part.startsWith('/') ? [<wbr key={part} />, part] : [part]));
