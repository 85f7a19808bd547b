/** x and y of one row, both greater than 0. */
export type Row = readonly [x: number, y: number];

/**
 * A law corrected by rows that are known better: y(x) = law(x) · r(x), ln r straight in ln x between the rows' ratios to the law, held beyond
 * the first and last row. At a row it is the row. Derivation: interpolation.
 */
export function byRows(law: (x: number) => number, rows: readonly Row[]): (x: number) => number {
  if (rows.length === 0) throw new RangeError('rows is empty; a law without rows needs no correction');
  const sorted = [...rows].sort((a, b) => a[0] - b[0]);
  const at = sorted.map(([x]) => Math.log(x));
  const ratio = sorted.map(([x, y]) => Math.log(y / law(x)));
  const last = at.length - 1;
  return (x) => {
    const u = Math.log(x);
    if (u <= at[0]!) return law(x) * Math.exp(ratio[0]!);
    if (u >= at[last]!) return law(x) * Math.exp(ratio[last]!);
    let k = 1;
    while (at[k]! < u) k++;
    const share = (u - at[k - 1]!) / (at[k]! - at[k - 1]!);
    return law(x) * Math.exp(ratio[k - 1]! + share * (ratio[k]! - ratio[k - 1]!));
  };
}
