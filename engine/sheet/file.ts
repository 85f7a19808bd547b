import * as v from 'valibot';
import { DESIGNS_FORMAT, type Document, FORMAT, VERSION } from './document';
import { jsonFault, nestsTooDeep } from './json-fault';
import { bringUp, type Migration, migrations } from './migrations/index';
import { documentSchema } from './schema';
import { type FileProblem, problem, validate } from './validate';

export type Opened =
  | { readonly ok: true; readonly document: Document }
  /** Nothing was opened. `message` says why; `problems` lists each place. */
  | { readonly ok: false; readonly message: string; readonly problems: readonly FileProblem[] };

export type Refused = Extract<Opened, { ok: false }>;

/** What this build reads; another only in tests of the way up from old versions. */
export interface Reads {
  readonly version: number;
  readonly migrations: readonly Migration[];
}

const NOW: Reads = { version: VERSION, migrations };

const SEVERAL =
  'This file holds several designs, and one is asked for here. Nothing was opened. Open it on the page, which keeps each of them, and save the one that you want.';

/** Bytes of the largest file that is read; a sheet of a hundred parts has a hundredth of it. */
export const LARGEST_FILE = 5_000_000;

/** The refusal of a file of so many bytes, to be asked before it is read; undefined for one that may be read. */
export function tooLarge(bytes: number, largest = LARGEST_FILE): Refused | undefined {
  if (bytes <= largest) return undefined;
  const found = `${Math.ceil(bytes / 1e5) / 10} MB`;
  const message = `This file is too large: ${found}, and at most ${largest / 1e6} MB are read. Nothing was opened. A design has far less; look whether it is the right file.`;
  return { ok: false, message, problems: [{ path: '', expected: `at most ${largest / 1e6} MB`, found, message }] };
}

/** Reads the text of a file. */
export function openText(text: string, reads: Reads = NOW): Opened {
  // A character takes a byte or more, so what is too long here was not asked about before it was read.
  const refused = tooLarge(text.length);
  if (refused) return refused;
  const read = readData(text);
  return read.ok ? openData(read.file, reads) : read;
}

/** The plain data of a file of any format. */
export function readData(text: string): { readonly ok: true; readonly file: unknown } | Refused {
  const plain = text.replace(/^\uFEFF/, '');
  try {
    const file: unknown = JSON.parse(plain, withoutBlanks);
    if (!nestsTooDeep(file)) return { ok: true, file };
  } catch {
    // What is wrong is looked for below.
  }
  const { line, column, expected, found } = jsonFault(plain)!;
  const message = `This file is broken at line ${line}, column ${column}: expected ${expected}, found ${found}. Nothing was opened.`;
  return refuse(message, [{ path: '', expected, found, message }]);
}

/** One design as plain data of any version. */
export function openData(file: unknown, reads: Reads = NOW): Opened {
  if (isRecord(file) && file.format === DESIGNS_FORMAT) {
    return refuse(SEVERAL, [problem('format', `"${FORMAT}"`, `"${DESIGNS_FORMAT}"`)]);
  }
  if (!isRecord(file) || file.format !== FORMAT) {
    const found = isRecord(file) && typeof file.format === 'string' ? `"${file.format}"` : 'nothing';
    return refuse('This file is not a Tetherwright design. Nothing was opened.', [
      problem('format', `"${FORMAT}"`, found),
    ]);
  }
  const { version } = file;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return refuseAll([problem('version', 'a whole number of 1 or more', JSON.stringify(version) ?? 'nothing')]);
  }
  if (version > reads.version) {
    const message = `This file was written by a newer Tetherwright (version ${version}; this one reads up to ${reads.version}). Nothing was opened. Load the newest Tetherwright and open the file there.`;
    return refuse(message, [problem('version', `at most ${reads.version}`, String(version))]);
  }
  const validated = validate(bringUp(file, version, reads.version, reads.migrations));
  return validated.ok ? validated : refuseAll(validated.problems);
}

export const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;

export const refuse = (message: string, problems: readonly FileProblem[]): Refused => ({
  ok: false,
  message,
  problems,
});

export function refuseAll(problems: readonly FileProblem[]): Refused {
  const count = problems.length === 1 ? 'One thing in it is' : `${problems.length} things in it are`;
  const first = problems[0]!.message;
  return refuse(`This file cannot be opened. ${count} not as it should be: ${first} Nothing was opened.`, problems);
}

/** Records of texts in which a blank text says the same as none. Only what says something is read and written. */
const FIELDS: ReadonlySet<string> = new Set(['fields', 'values']);

const isGroup = (value: unknown): value is object =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const withoutBlanks = (key: string, value: unknown): unknown =>
  FIELDS.has(key) && isGroup(value)
    ? Object.fromEntries(Object.entries(value).filter(([, text]) => text !== ''))
    : value;

const SORTED: ReadonlySet<string> = new Set([...FIELDS, 'baseline', 'changes']);

/** Names in a record are sorted, so that the order of typing doesn't show in version control. */
const inOrder = (key: string, value: unknown): unknown =>
  SORTED.has(key) && isGroup(value)
    ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
    : value;

/** The text of a file: always the same for the same document, in the order of the schema. */
export function serialise(document: Document): string {
  const write = (key: string, value: unknown): unknown => inOrder(key, withoutBlanks(key, value));
  return `${JSON.stringify(v.parse(documentSchema, document), write, 2)}\n`;
}
