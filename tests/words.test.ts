import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { type Text, textsOf, textsOfData } from './texts';

const ROOT = join(import.meta.dirname, '..');
const SOURCE = /(?<!\.d|\.parser|\.parser\.terms)\.tsx?$/;
const WORDS: ReadonlySet<string> = new Set(['title', 'text', 'below', 'above', 'question', 'tells', 'what', 'about']);

const filesIn = (folder: string, ending: RegExp): string[] =>
  readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
    .filter((file) => ending.test(file))
    .map((file) => join(folder, file));

const texts: readonly Text[] = [
  ...['engine', 'workbook']
    .flatMap((folder) => filesIn(folder, SOURCE))
    .flatMap((file) => textsOf(file, readFileSync(join(ROOT, file), 'utf8'))),
  ...filesIn('data/studies', /\.json$/).flatMap((file) => textsOfData(join(ROOT, file), WORDS)),
];

/** Words, and no name, path, kind or key: there is a space in it, or it begins as a title does. */
const isRead = ({ text }: Text): boolean => /\p{L}{2,} \p{L}|^\p{Lu}\p{Ll}+$/u.test(text);
const read = texts.filter(isRead);

/** Words of the code for what a builder calls otherwise, and words of other programs. */
const INNER =
  /(?<![\p{L}_./-])(workbooks?|cells?|blocks?|sweeps?|swept|levers?|spreads?|notebooks?|worksheets?|spreadsheets?)(?![\p{L}_])/iu;

/** Where such a word is the trade's own, or a word of every day. */
const TRADE: readonly (readonly [file: RegExp, word: RegExp, why: string])[] = [
  [/blocks\/(wing|tail)\//, /\bsweep\b/gi, 'how far a wing or a fin leans back'],
  [/blocks\/(control|shutoff)\//, /\blever(s| arms?)?\b/gi, 'an arm about a pivot'],
  [/blocks\/engines\/electric/, /\blithium cell\b/gi, 'a part of a battery'],
  [/library\/tables\/packs/, /\bcells\b/gi, 'parts of a battery'],
  [/page\/(title-block|print\/)/, /\btitle block\b/gi, 'the corner of a drawing'],
  [/blocks\/tank\//, /\btakes off\b/gi, 'what a cut does to a box'],
];

const withoutTrade = ({ file, text }: Text): string =>
  TRADE.reduce((left, [where, word]) => (where.test(file) ? left.replace(word, '') : left), text);

const told = (found: readonly Text[]): string[] => found.map(({ file, line, text }) => `${file}:${line} ${text}`);

test('there is something to read', () => expect(read.length).toBeGreaterThan(3000));

test('no text says what only the code calls so', () => {
  expect(told(read.filter((each) => INNER.test(withoutTrade(each))))).toEqual([]);
});

test('quotes in sentences are curly, but where they are typed in a shell, in what is said of the tables of the program and around attributes of a link', () => {
  const straight = /\p{L}'\p{L}|(^|[\s(])"(?=\S)(?!")|\S"([\s.,;:)]|$)/u;
  const mayBeStraight = /command\/arguments|library\/(table|library-table)\.ts|note\/html\.ts/;
  expect(told(read.filter(({ file, text }) => straight.test(text) && !mayBeStraight.test(file)))).toEqual([]);
});

test('what is pressed and what is called begins with a capital', () => {
  const pressed =
    /^(add|remove|edit|done|close|open|more|up|down|copy|take|put|delete|forget)( (an?|this|the|one)? ?[a-z]+)?$/;
  expect(told(read.filter(({ file, text }) => /\.tsx$/.test(file) && pressed.test(text)))).toEqual([]);
});

describe('one word for one thing', () => {
  test.each([
    ['Remove', /\b(take|takes|taken) (it |them |one |one of them )?(off|out)\b|\bforget the\b/i],
    ['saved in this browser only', /not in a file/],
    ['Close', /\b(put away|back to the sheet|fold(ed)? away)\b/i],
    ['up to date', /all settled/],
  ])('%s', (_word, other) => expect(told(read.filter((each) => other.test(withoutTrade(each))))).toEqual([]));
});

test.each(TRADE)('%s %s stands there still: %s', (where, word) => {
  expect(read.some(({ file, text }) => where.test(file) && new RegExp(word.source, 'i').test(text))).toBe(true);
});
