import type { ColumnTable } from 'arquero';

/** The table in the order of one of its columns. What has no answer comes last either way; equal rows stay as they were. */
export function inOrder(rows: ColumnTable, key: string, descending: boolean): ColumnTable {
  const column = key === '' ? undefined : (rows.column(key) as ArrayLike<number> | undefined);
  if (!column) return rows;
  const sign = descending ? -1 : 1;
  return rows.create({
    order: (a: number, b: number) => {
      const [x, y] = [column[a]!, column[b]!];
      if (x === y) return a - b;
      const [noX, noY] = [Number.isNaN(x), Number.isNaN(y)];
      if (noX || noY) return noX && noY ? a - b : noX ? 1 : -1;
      return x < y ? -sign : sign;
    },
  });
}
