import { titleTold } from '../../../library/told';
import type { Sheet } from '../../../store/sheet';
import type { KnownName } from './read-row';

/** Tables of the library that give what each of these texts names. */
const TABLES: Readonly<Record<string, readonly string[]>> = {
  material: ['materials'],
  wire: ['wire', 'tubes', 'line_kinds'],
};

const GIVES: Readonly<Record<string, string>> = { material: 'density', wire: 'linear_mass' };

/** What a pasted row can say of what it is made of: choices of the design, rows of its own, the library. */
export function knownNames(sheet: Sheet): Readonly<Record<string, readonly KnownName[]>> {
  const own = sheet.part('rows');
  const choices = sheet.cells.value.filter((cell) => cell.kind === 'choice');
  const rowsOf = (tables: readonly string[]): readonly KnownName[] =>
    tables.flatMap((name) => [
      ...own.filter(({ table }) => table === name),
      ...(sheet.tableNamed(name)?.rows ?? []).map((row) => ({ name: row.name, title: titleTold(row, sheet.units()) })),
    ]);
  const stacks = choices.filter(({ of }) => of === 'stack');
  const choicesGiving = (number: string): readonly KnownName[] =>
    choices.filter(({ name }) => sheet.names.value.has(`${name}.${number}`));
  const known = Object.entries(TABLES).map(
    ([text, tables]) => [text, [...choicesGiving(GIVES[text]!), ...rowsOf(tables)]] as const,
  );
  return {
    ...Object.fromEntries(known),
    stack: stacks.flatMap((cell) => [
      cell,
      ...cell.options.map((option) => ({ name: `${cell.name}.${option.name}`, title: option.title })),
    ]),
  };
}
