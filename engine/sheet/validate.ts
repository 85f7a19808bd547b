import * as v from 'valibot';
import type { Document } from './document';
import { KEPT_NAMES } from './kept-names';
import { withOwnIds } from './own-ids';
import { documentSchema } from './schema';
import { withOwnVariantNames } from './variants';
import { withWeighedAs } from './weighed-as';

/** One thing that is wrong in a file. */
export interface FileProblem {
  /** `sheets[0].pieces[3].rows[0].unit`; '' for the file as a whole. */
  readonly path: string;
  readonly expected: string;
  readonly found: string;
  /** All of it, to be read. */
  readonly message: string;
}

export type Validated =
  | { readonly ok: true; readonly document: Document }
  | { readonly ok: false; readonly problems: readonly FileProblem[] };

/** Checks plain data against the schema of a document. */
export function validate(file: unknown): Validated {
  const kept = keptNamesIn(file, '');
  if (kept.length > 0) return { ok: false, problems: kept };
  const parsed = v.safeParse(documentSchema, file);
  if (!parsed.success) return { ok: false, problems: parsed.issues.map(problemOf) };
  return { ok: true, document: withWeighedAs(withOwnVariantNames(withOwnIds(parsed.output))) };
}

export function problem(path: string, expected: string, found: string): FileProblem {
  return { path, expected, found, message: `${path}: expected ${expected}, found ${found}.` };
}

type Issue = v.InferIssue<typeof documentSchema>;

function problemOf(issue: Issue): FileProblem {
  const path = pathOf(issue.path ?? []);
  // A part that the schema doesn't know is reported by its name.
  if (issue.expected === 'never') return problem(path, 'nothing of that name', describe(issue.path?.at(-1)?.value));
  return problem(path, expectedOf(issue), describe(issue.input));
}

const pathOf = (items: readonly { readonly key?: unknown }[]): string =>
  items
    .map(({ key }) => (typeof key === 'number' ? `[${key}]` : `.${key}`))
    .join('')
    .replace(/^\./, '');

const KINDS: Readonly<Record<string, string>> = {
  string: 'a text',
  number: 'a number',
  boolean: 'true or false',
  Array: 'a list',
  Object: 'a group of named values',
};
const CHECKS: Readonly<Record<string, string>> = {
  min_length: 'a text that is not blank',
  integer: 'a whole number',
  min_value: 'a number of 1 or more',
  check: 'a group of named values',
};

function expectedOf(issue: Issue): string {
  // A missing part is expected by its own name, which the path says already.
  if (issue.type === 'strict_object' && issue.received === 'undefined') return 'a value';
  if (issue.type === 'min_length' && Array.isArray(issue.input)) return 'a list of at least one';
  if (unitAsked(issue)) return 'a unit such as mm, g or m/s, or nothing between the quotes for a plain number';
  if (issue.kind === 'validation') return CHECKS[issue.type] ?? String(issue.expected);
  const expected = String(issue.expected);
  return KINDS[expected] ?? expected.replace(/^\(|\)$/g, '').replaceAll(' | ', ' or ');
}

/** All units there are would be too many to tell. */
const unitAsked = ({ type, path }: Issue): boolean => type === 'picklist' && path?.at(-1)?.key === 'unit';

const LONGEST = 40;

function describe(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object' && value !== null) return 'a group of named values';
  if (typeof value !== 'string') return String(value);
  return value.length > LONGEST ? `"${value.slice(0, LONGEST)}…"` : `"${value}"`;
}

/** Names in plain data that the program keeps for itself. */
export function keptNamesIn(value: unknown, path: string): FileProblem[] {
  if (typeof value !== 'object' || value === null) return [];
  if (Array.isArray(value)) return value.flatMap((each, k) => keptNamesIn(each, `${path}[${k}]`));
  return Object.entries(value).flatMap(([name, each]) => {
    const at = path === '' ? name : `${path}.${name}`;
    return KEPT_NAMES.includes(name)
      ? [problem(at, 'a name that the program does not keep for itself', `"${name}"`)]
      : keptNamesIn(each, at);
  });
}
