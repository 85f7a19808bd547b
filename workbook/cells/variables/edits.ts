import {
  applyChanges,
  type Change,
  cellsOf,
  type Document,
  freeName,
  isOwnName,
  nameFromTitle,
  rename,
  takenNames,
  type Variable,
  type VariablesCell,
} from '../../../engine/index';

export const changeRow = (cell: VariablesCell, name: string, change: (row: Variable) => Variable): VariablesCell => ({
  ...cell,
  rows: cell.rows.map((row) => (row.name === name ? change(row) : row)),
});

/** A row put in behind another; the last place without one. */
export function withVariable(cell: VariablesCell, row: Variable, after?: string): VariablesCell {
  const at = after === undefined ? -1 : cell.rows.findIndex((each) => each.name === after);
  return { ...cell, rows: cell.rows.toSpliced(at < 0 ? cell.rows.length : at + 1, 0, row) };
}

export const withoutVariable = (cell: VariablesCell, name: string): VariablesCell => ({
  ...cell,
  rows: cell.rows.filter((row) => row.name !== name),
});

export const copyOfVariable = (row: Variable, taken: ReadonlySet<string>): Variable => ({
  ...row,
  name: freeName(row.name, taken),
  title: `${row.title}, copy`,
});

/** Gives a variable another title. A name that came from the old title by itself follows, with every formula that says it. */
export function retitleVariable(
  document: Document,
  row: Variable,
  title: string,
): { readonly changes: readonly Change[]; readonly name: string } {
  const wanted = nameFromTitle(title);
  const others = new Set([...takenNames(document)].filter((name) => name !== row.name));
  const name = isOwnName(row.name, row.title) && wanted !== '' ? freeName(wanted, others) : row.name;
  const renamed = rename(document, row.name, name);
  const changes = renamed.ok ? renamed.changes : [];
  for (const cell of cellsOf(applyChanges(document, changes).document)) {
    if (cell.kind !== 'variables' || !cell.rows.some((each) => each.name === name)) continue;
    return {
      changes: [...changes, { change: 'cell', cell: changeRow(cell, name, (each) => ({ ...each, title })) }],
      name,
    };
  }
  return { changes: [], name: row.name };
}
