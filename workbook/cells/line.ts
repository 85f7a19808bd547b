import { type BlockCell, bound, type Cell, type CellKind, inSentence, type PartsCell } from '../../engine/index';
import type { Sheet } from '../store/sheet';
import { type Verdict, verdict } from './check/verdict';

/** What a piece says of itself in one line, closed or in the item list. */
export interface Line {
  /** "1000 mm, 21.5 dm², 12 %". */
  readonly words: string;
  /** The one value of the item list. */
  readonly value: string;
  /** Of a check; of a model `broken` where a number in it stops the design, `low` where one in its line is too low. */
  readonly stands?: Verdict['kind'] | 'low';
}

type Reading = Pick<Sheet, 'shown' | 'value' | 'name' | 'optionTitle' | 'blockNamed' | 'under' | 'part'>;
type Lines = { readonly [K in CellKind]: (cell: Extract<Cell, { kind: K }>, sheet: Reading) => Line };

const NOTHING: Line = { words: '', value: '' };
/** Of a note, characters. */
const LONGEST = 90;

const lines: Lines = {
  note: ({ text }) => ({ words: firstWords(text), value: '' }),
  variables({ rows }, sheet) {
    const [first] = rows;
    const words = rows.map(({ name, title }) => `${title} ${sheet.shown(name)}`).join(', ');
    return { words, value: rows.length === 1 && first ? sheet.shown(first.name) : `${rows.length}` };
  },
  choice(cell, sheet) {
    const title = sheet.optionTitle(cell.name, cell.text) ?? cell.text;
    return { words: title, value: title };
  },
  formula({ lines: rows }, sheet) {
    const words = rows.map(({ name }) => `${name.replaceAll('_', ' ')} ${sheet.shown(name)}`).join(', ');
    return { words, value: rows.length === 1 ? sheet.shown(rows[0]!.name) : `${rows.length}` };
  },
  model: modelLine,
  parts: partsLine,
  drawing: () => NOTHING,
  trial_series({ axes, wanted }, sheet) {
    const along = axes.map(({ of }) => titleOf(of, sheet)).join(' and ');
    return { words: along === '' ? '' : `${list(wanted, sheet)} along ${along}`, value: '' };
  },
  tolerances: ({ samples, rows, parts }) => ({
    words: `${samples} designs, ${rows.length} numbers${parts ? ' and all parts' : ''} differ`,
    value: '',
  }),
  what_helps({ rows, wanted }, sheet) {
    return { words: `${rows.length} changes to ${list(wanted, sheet)}`, value: '' };
  },
  chart({ up, of = '', across }, sheet) {
    const now = up.length > 0 ? sheet.shown(up[0]!) : '–';
    const against = sheet.name(across) ? ` against ${titleOf(across, sheet)}` : '';
    return { words: of === '' || up.length > 0 ? `${list(up, sheet)}${against}` : '', value: now === '–' ? '' : now };
  },
  table: ({ columns }, sheet) => ({ words: list(columns, sheet), value: '' }),
  check(cell, sheet) {
    const { kind, words, now } = verdict(cell, sheet);
    return { words, value: kind === 'unlimited' ? `${now}, no limit` : now, stands: kind };
  },
  log: ({ rows }) => ({ words: rows.length === 1 ? '1 flight' : `${rows.length} flights`, value: `${rows.length}` }),
  fit: ({ factors }, sheet) => ({ words: list(factors, sheet), value: '' }),
  what_mends: ({ of, way, name }, sheet) => ({
    words:
      of === ''
        ? ''
        : `${titleOf(of, sheet)}, ${way === 'to' ? 'wanted' : `at ${way}`} ${sheet.shown(`${name}.wanted`)}`,
    value: of === '' ? '' : sheet.shown(of),
  }),
  best_compromises: ({ goals }, sheet) => ({
    words: goals.map(({ of, way }) => `${way} ${titleOf(of, sheet)}`).join(', '),
    value: '',
  }),
  weighing: ({ parts }, sheet) => ({
    words:
      parts === ''
        ? ''
        : `${sheet.shown(`${parts}.weighed_share`)} weighed, CG when finished ${sheet.shown(`${parts}.x`)}`,
    value: parts === '' ? '' : sheet.shown(`${parts}.weighed_share`),
  }),
  guess: ({ question, guesses, shown }) => ({
    words: firstWords(question),
    value: shown ? 'answered' : guesses.length === 0 ? '' : `${guesses.length} in`,
  }),
  variants(_, sheet) {
    const names = (sheet.part('variants') ?? []).map(({ name }) => name);
    return { words: names.join(', '), value: `${names.length}` };
  },
};

export const lineOf = (cell: Cell, sheet: Reading): Line =>
  (lines[cell.kind] as (cell: Cell, sheet: Reading) => Line)(cell, sheet);

function modelLine({ name, of }: BlockCell, sheet: Reading): Line {
  const { line: lineNames = [], lineTitled } = sheet.blockNamed(of) ?? {};
  const told = lineNames
    .map((each) => ({ path: `${name}.${each}`, shown: sheet.shown(`${name}.${each}`) }))
    .filter(({ shown }) => shown !== '–');
  const words = told.map(({ path, shown }) => (lineTitled ? `${titleOf(path, sheet)} ${shown}` : shown)).join(', ');
  const stops = (sheet.blockNamed(of)?.results ?? []).some((each) => sheet.under(`${name}.${each.name}`)?.stops);
  const low = lineNames.some((each) => sheet.under(`${name}.${each}`));
  const stands = stops ? 'broken' : low ? 'low' : undefined;
  return { words, value: told[0]?.shown ?? '', ...(stands ? { stands } : {}) };
}

function partsLine({ name, rows }: PartsCell, sheet: Reading): Line {
  const weighed = rows.filter(({ fields }) => (fields.weighed ?? '').trim() !== '');
  const mass = sheet.shown(`${name}.mass`);
  const whole = rows.reduce((sum, row) => sum + known(sheet.value(`${name}.${row.name}.mass`)), 0);
  const share = weighed.reduce((sum, row) => sum + known(sheet.value(`${name}.${row.name}.mass`)), 0) / whole;
  const said = Number.isFinite(share) ? `${bound(String(Math.round(100 * share)), '%')} weighed` : '';
  return { words: [`${rows.length} parts`, mass, said].filter((each) => each !== '').join(', '), value: said };
}

const known = (value: number): number => (Number.isNaN(value) ? 0 : value);

const titleOf = (path: string, sheet: Reading): string => inSentence(sheet.name(path)?.title ?? path);

const list = (paths: readonly string[], sheet: Reading): string => paths.map((path) => titleOf(path, sheet)).join(', ');

function firstWords(text: string): string {
  const plain = text
    .replace(/\{[^}]*\}/g, '…')
    .replace(/[*_`#]/g, '')
    .replace(/\s+/g, ' ')
    .trim();
  return plain.length <= LONGEST ? plain : `${plain.slice(0, plain.lastIndexOf(' ', LONGEST))} …`;
}
