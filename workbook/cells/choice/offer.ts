import {
  type ChoiceCell,
  type ChoiceOption,
  type Description,
  type RowDescription,
  shownUnit,
  type TableDescription,
  type UnitSet,
  withUnit,
} from '../../../engine/index';
import { titleTold } from '../../library/told';
import { type Contents, cellOf, type Offer } from '../shared/new-cell';

const newChoice: Contents<ChoiceCell> = {
  kind: 'choice',
  of: 'numbers',
  columns: [],
  options: [
    { name: 'first', title: 'first', pattern: 'plain', values: {} },
    { name: 'second', title: 'second', pattern: 'plain', values: {} },
  ],
  text: 'first',
};

/** The first rows of a table, for a start. */
const FIRST_ROWS = 3;

const newLibraryChoice = ({ name, rows }: TableDescription, set: UnitSet): Contents<ChoiceCell> => {
  const options = rows
    .slice(0, FIRST_ROWS)
    .map((row) => ({ name: row.name, title: titleTold(row, set), pattern: 'plain' as const }));
  return { kind: 'choice', of: 'library', table: name, columns: [], options, text: options[0]?.name ?? '' };
};

/** Materials that a new choice begins with where the library has them, and their line patterns. */
const USUAL_STOCK = [
  { material: 'balsa_medium', pattern: 'grain' },
  { material: 'light_ply', pattern: 'ply' },
] as const;

const SHEET: Readonly<Record<UnitSet, string>> = { metric: '3 mm', inch_pound: '1/8 in' };

/** Sheets of a usual thickness, to be corrected. */
function newStock(library: readonly RowDescription[], set: UnitSet): Contents<ChoiceCell> {
  const options = USUAL_STOCK.flatMap(({ material, pattern }): ChoiceOption[] => {
    const row = library.find((each) => each.name === material);
    return row ? [stockOf(row.name, `${row.title}, ${SHEET[set]}`, pattern, set)] : [];
  });
  const first = options[0] ?? stockOf('', 'first', 'plain', set);
  return {
    kind: 'choice',
    of: 'stack',
    columns: [],
    options: options.length > 0 ? options : [first],
    text: first.name,
  };
}

const stockOf = (material: string, title: string, pattern: ChoiceOption['pattern'], set: UnitSet): ChoiceOption => ({
  name: material === '' ? 'first' : material,
  title,
  pattern,
  layers: [{ name: 'sheet', material, text: material === '' ? withUnit('0', shownUnit('g/m²', set)) : SHEET[set] }],
});

/** Of materials, of numbers or names, and one for each table of the library that a block can follow. */
export const choiceOffers = (offered: Description | undefined): readonly Offer[] => [
  {
    key: 'stock',
    word: 'Choice of materials',
    about: 'One of several materials or stacks of layers, for parts that are cut from it.',
    make: (document) =>
      cellOf(document, 'new_stock', 'New stock', newStock(rowsOf(offered, 'materials'), document.units)),
  },
  {
    key: 'choice',
    word: 'Choice of numbers or names',
    about: 'One of several sets of numbers, such as lines, or of names that the model takes.',
    make: (document) => cellOf(document, 'new_choice', 'New choice', newChoice),
  },
  ...(offered?.tables ?? []).filter((table) => table.feeds !== '').map(libraryOffer),
];

/** A choice among rows of a table of the library that a block can follow. */
const libraryOffer = (table: TableDescription): Offer => ({
  key: `library ${table.name}`,
  word: `Choice of ${table.title.toLowerCase()}`,
  about: `One of several rows of the library or of your own; the piece of the model that it is for can follow it.`,
  make: (document) => cellOf(document, `new_${table.name}`, table.title, newLibraryChoice(table, document.units)),
});

const rowsOf = (offered: Description | undefined, table: string): readonly RowDescription[] =>
  offered?.tables.find((each) => each.name === table)?.rows ?? [];
