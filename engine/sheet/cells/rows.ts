/** Replaces one element of a list; the list itself where the element stays the same. */
export function withRow<T>(rows: readonly T[], index: number, row: T): readonly T[] {
  return rows[index] === row ? rows : rows.with(index, row);
}

/** Changes every element; the list itself where none changes. */
export function mapRows<T>(rows: readonly T[], change: (row: T) => T): readonly T[] {
  const changed = rows.map(change);
  return changed.some((row, k) => row !== rows[k]) ? changed : rows;
}

/** Changes some texts of a record; the record itself where none changes. */
export function mapFields<R extends object>(record: R, change: Partial<R>): R {
  for (const key of Object.keys(change) as (keyof R)[]) {
    if (record[key] !== change[key]) return { ...record, ...change };
  }
  return record;
}

/** A record of texts with one set. A blank one is left out: it stands for the default. */
export function withText(
  texts: Readonly<Record<string, string>>,
  name: string,
  text: string,
): Readonly<Record<string, string>> {
  const { [name]: _, ...rest } = texts;
  return text === '' ? rest : { ...rest, [name]: text };
}

/** Changes every text of a record; the record itself where none changes. */
export function mapTexts(
  texts: Readonly<Record<string, string>>,
  change: (text: string, name: string) => string,
): Readonly<Record<string, string>> {
  const entries = Object.entries(texts).map(([name, text]) => [name, change(text, name)] as const);
  return entries.some(([name, text]) => texts[name] !== text) ? Object.fromEntries(entries) : texts;
}
