import type { BlockCell, ChoiceCell, FieldDescription, RowDescription, TableDescription } from '../../../engine/index';

/** The choice with one row more; the first one is picked at once. */
export function withOption(cell: ChoiceCell, row: Pick<RowDescription, 'name' | 'title'>): ChoiceCell {
  const options = [...cell.options, { name: row.name, title: row.title, pattern: 'plain' as const }];
  return { ...cell, options, text: cell.text === '' ? row.name : cell.text };
}

/** The choice without one of its options; if that was picked, the first that is left is. */
export function withoutOption(cell: ChoiceCell, name: string): ChoiceCell {
  const options = cell.options.filter((option) => option.name !== name);
  return { ...cell, options, text: cell.text === name ? (options[0]?.name ?? '') : cell.text };
}

/** What to write in the fields of a block so that they follow a choice: its numbers of the same names, where they are not there yet. */
export function feedingTexts(
  cell: ChoiceCell,
  block: BlockCell,
  table: TableDescription,
  fields: readonly FieldDescription[],
): readonly (readonly [path: string, text: string])[] {
  return table.columns
    .filter((column) => fields.some((field) => field.name === column.name))
    .map((column) => [column.name, `${cell.name}.${column.name}`] as const)
    .filter(([name, text]) => block.fields[name] !== text)
    .map(([name, text]) => [`${block.name}.${name}`, text] as const);
}
