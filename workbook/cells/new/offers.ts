import {
  type BlockDescription,
  type Cell,
  type Description,
  type Document,
  freeId,
  freeName,
  type RowDescription,
  type TableDescription,
  takenNames,
} from '../../../engine/index';
import {
  newChart,
  newCheck,
  newChoice,
  newFormula,
  newLevers,
  newLibraryChoice,
  newSpread,
  newStock,
  newSweep,
  newTable,
  newVariables,
} from './first-contents';
import { newFit, newLog } from './first-log';

/** One line of the list of what can be added. */
export interface Offer {
  readonly key: string;
  readonly word: string;
  /** What it is for. */
  readonly about: string;
  /** The cell as it begins, for this document. */
  make(document: Document): Cell;
}

type Contents<C> = C extends Cell ? Omit<C, 'id' | 'name' | 'title'> : never;

/** A cell with an id and a name that are free. */
function cellOf(document: Document, name: string, title: string, contents: Contents<Cell>): Cell {
  return { id: freeId(document), name: freeName(name, takenNames(document)), title, ...contents } as Cell;
}

/** Everything but the blocks, in the order in which a sheet is written. */
export const plainOffers = (offered: Description | undefined): readonly Offer[] => [
  {
    key: 'note',
    word: 'Note',
    about: 'Words: what is to be decided, what was found.',
    make: (document) => cellOf(document, 'new_note', 'New note', { kind: 'note', text: '' }),
  },
  {
    key: 'variables',
    word: 'Variables',
    about: 'Quantities with a unit and a slide: an engine station, a tip weight, a line length.',
    make: (document) => cellOf(document, 'new_variables', 'New variables', newVariables(document)),
  },
  {
    key: 'stock',
    word: 'Choice of materials',
    about: 'One of several materials or stacks of layers, for parts that are cut from it.',
    make: (document) => cellOf(document, 'new_stock', 'New stock', newStock(rowsOf(offered, 'materials'))),
  },
  {
    key: 'choice',
    word: 'Choice of numbers or names',
    about: 'One of several sets of numbers, such as lines, or of names that a field of a block takes.',
    make: (document) => cellOf(document, 'new_choice', 'New choice', newChoice),
  },
  ...(offered?.tables ?? []).filter((table) => table.feeds !== '').map(libraryOffer),
  {
    key: 'formula',
    word: 'Formula',
    about: 'Lines of calculation from anything that has a name on the sheet.',
    make: (document) => cellOf(document, 'new_formula', 'New formula', newFormula(document)),
  },
  {
    key: 'parts',
    word: 'Parts',
    about: 'The table of weight and balance: what each part weighs and where it is.',
    make: (document) => cellOf(document, 'parts', 'Weight and balance', { kind: 'parts', fuel: '', rows: [] }),
  },
  {
    key: 'drawing',
    word: 'Drawing',
    about: 'Plan and side view to scale. The first one stands beside the cells.',
    make: (document) => cellOf(document, 'drawing', 'Scale drawing', { kind: 'drawing' }),
  },
  {
    key: 'sweep',
    word: 'Sweep',
    about: 'Many designs at once along one to four variables or choices.',
    make: (document) => cellOf(document, 'new_sweep', 'New sweep', newSweep(document)),
  },
  {
    key: 'spread',
    word: 'Spread',
    about: 'What becomes of the results when weights, stations and settings are not quite as typed.',
    make: (document) => cellOf(document, 'new_spread', 'New spread', newSpread(document)),
  },
  {
    key: 'levers',
    word: 'Levers',
    about: 'What a change here or there does to the results, one at a time, the strongest first.',
    make: (document) => cellOf(document, 'new_levers', 'New levers', newLevers(document)),
  },
  {
    key: 'chart',
    word: 'Chart',
    about: 'A picture of a sweep or a spread.',
    make: (document) => cellOf(document, 'new_chart', 'New chart', newChart(document)),
  },
  {
    key: 'table',
    word: 'Rows of a sweep',
    about: 'The designs of a sweep as a table to sort, limit, group and save.',
    make: (document) => cellOf(document, 'new_rows', 'Rows of a sweep', newTable(document)),
  },
  {
    key: 'check',
    word: 'Check',
    about: 'Stop if a result is under or over a limit, with the reason.',
    make: (document) => cellOf(document, 'new_check', 'New check', newCheck(document)),
  },
  {
    key: 'log',
    word: 'Log of flown laps',
    about: 'What was timed, pulled and read on flights, one row a flight.',
    make: (document) => cellOf(document, 'flown', 'Laps flown', newLog(document)),
  },
  {
    key: 'fit',
    word: 'Fit to flown laps',
    about: 'Drag, power or other factors for which the model comes nearest to a log.',
    make: (document) => cellOf(document, 'fit', 'Fit to flown laps', newFit(document)),
  },
];

/** A choice among rows of a table of the library that a block can follow. */
const libraryOffer = (table: TableDescription): Offer => ({
  key: `library ${table.name}`,
  word: `Choice of ${table.title.toLowerCase()}`,
  about: `One of several rows of the library or of your own; the block for ${table.feeds} can follow it.`,
  make: (document) => cellOf(document, `new_${table.name}`, table.title, newLibraryChoice(table)),
});

/** A block of the model: its form and results come from what it declares. */
export const blockOffer = (block: BlockDescription): Offer => ({
  key: `block ${block.kind}`,
  word: block.title,
  about: firstSentence(block.doc),
  make: (document) => cellOf(document, block.kind, block.title, { kind: 'model', of: block.kind, fields: {} }),
});

const firstSentence = (doc: string): string => /^.*?[.:](?=\s|$)/.exec(doc)?.[0].replace(/:$/, '.') ?? doc;

const rowsOf = (offered: Description | undefined, table: string): readonly RowDescription[] =>
  offered?.tables.find((each) => each.name === table)?.rows ?? [];
