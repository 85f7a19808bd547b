/** Where a text stops being JSON, and what may stand there. Engines say it each in their own words, so it is found here. */
export interface JsonFault {
  /** Both counted from 1. */
  readonly line: number;
  readonly column: number;
  readonly expected: string;
  readonly found: string;
}

/** Deeper nesting than any sheet has. */
const DEEPEST = 200;

const SPACE = /[ \t\n\r]*/y;
// biome-ignore lint/suspicious/noControlCharactersInRegex: JSON forbids them in a string, and so does this.
const STRING = /"(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/y;
const NUMBER = /-?(?:0|[1-9][0-9]*)(?:\.[0-9]+)?(?:[eE][+-]?[0-9]+)?/y;
const WORD = /(?:true|false|null)(?![A-Za-z0-9_])/y;

/** The first fault by RFC 8259; undefined for a text that is JSON. */
export function jsonFault(text: string): JsonFault | undefined {
  let at = 0;
  let fault: JsonFault | undefined;

  const match = (pattern: RegExp): boolean => {
    pattern.lastIndex = at;
    if (!pattern.test(text)) return false;
    at = pattern.lastIndex;
    return true;
  };
  const take = (character: string): boolean => {
    match(SPACE);
    if (text[at] !== character) return false;
    at++;
    return true;
  };
  const fail = (expected: string): false => {
    match(SPACE);
    fault = { ...placeOf(text, at), expected, found: foundAt(text, at) };
    return false;
  };

  function value(depth: number): boolean {
    if (depth > DEEPEST) return fail(`at most ${DEEPEST} levels`);
    if (take('{')) return members('}', depth, member);
    if (take('[')) return members(']', depth, value);
    return match(STRING) || match(WORD) || match(NUMBER) || fail('a value');
  }
  function member(depth: number): boolean {
    if (!match(STRING)) return fail('a name in double quotes');
    return take(':') ? value(depth) : fail('a colon');
  }
  function members(end: '}' | ']', depth: number, one: (depth: number) => boolean): boolean {
    if (take(end)) return true;
    do {
      match(SPACE);
      if (!one(depth + 1)) return false;
    } while (take(','));
    return take(end) || fail(`a comma or ${end}`);
  }

  if (value(0)) {
    match(SPACE);
    if (at < text.length) fail('the end of the file');
  }
  return fault;
}

/** Whether plain data nest deeper than that. Level by level, since data can nest deeper than calls can. */
export function nestsTooDeep(data: unknown): boolean {
  let level = [data];
  for (let depth = 0; level.length > 0; depth++) {
    if (depth > DEEPEST) return true;
    level = level.flatMap((each) => (typeof each === 'object' && each !== null ? Object.values(each) : []));
  }
  return false;
}

function placeOf(text: string, at: number): { line: number; column: number } {
  const before = text.slice(0, at);
  return { line: before.split('\n').length, column: at - before.lastIndexOf('\n') };
}

const LONGEST_FOUND = 12;

function foundAt(text: string, at: number): string {
  if (at >= text.length) return 'the end of the file';
  const line = text.slice(at).split('\n', 1)[0]!;
  return line.length > LONGEST_FOUND ? `${line.slice(0, LONGEST_FOUND)}…` : line;
}
