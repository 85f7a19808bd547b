import { functionNames, reservedWords } from '../formula/index';
import { KEPT_NAMES } from './kept-names';

const NAME = /^[A-Za-z][A-Za-z0-9_]*$/;
const LONGEST = 60;

/** Words that the formula language keeps for itself. */
const KEPT: ReadonlySet<string> = new Set([...reservedWords, ...functionNames]);
const KEPT_BY_PROGRAM: ReadonlySet<string> = new Set(KEPT_NAMES);

/** An option may also be called by a word with hyphens, which its exact text picks. */
const OPTION_NAME = /^[A-Za-z][A-Za-z0-9_-]*$/;

/** What is wrong with a name, as a sentence; undefined where nothing is. */
export function nameFault(name: string, as: 'name' | 'option' = 'name'): string | undefined {
  if (name === '') return 'Something here has no name. Give it one.';
  if (name.length > LONGEST) return `The name “${name}” has ${name.length} characters. At most ${LONGEST} are allowed.`;
  if (KEPT_BY_PROGRAM.has(name)) return `“${name}” cannot be a name: the program keeps it for itself. Choose another.`;
  if (as === 'option') {
    return OPTION_NAME.test(name)
      ? undefined
      : `“${name}” cannot be the name of an option. A name starts with a letter and has letters, digits, _ and - only.`;
  }
  if (!NAME.test(name)) {
    return `“${name}” cannot be a name. A name starts with a letter and has letters, digits and _ only.`;
  }
  return KEPT.has(name)
    ? `“${name}” cannot be a name: it means something else in formulas. Choose another.`
    : undefined;
}

/** The path of the same thing under another last name: parts.fin, rudder → parts.rudder. */
export const renamedPath = (path: string, to: string): string => path.slice(0, path.lastIndexOf('.') + 1) + to;

/** Whether a path is the thing itself or something within it. */
const isWithin = (path: string, thing: string): boolean => path === thing || path.startsWith(`${thing}.`);

/** A path after what stands at `from` has moved to `to`. */
export const movedPath = (path: string, from: string, to: string): string =>
  isWithin(path, from) ? to + path.slice(from.length) : path;
