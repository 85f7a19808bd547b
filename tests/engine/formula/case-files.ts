import { readdirSync, readFileSync } from 'node:fs';

/** One case: a text and what must come of it. */
export interface LanguageCase {
  readonly title: string;
  readonly text: string;
  readonly expected: string;
}
export interface CaseFile {
  readonly name: string;
  /** What stands above the first case. */
  readonly head: string;
  readonly cases: readonly LanguageCase[];
}

/** Files of a folder beside this one: cases of the form "# title", text, "==>", what must come of it. */
export function caseFiles(folder: string): CaseFile[] {
  const url = new URL(`./cases/${folder}/`, import.meta.url);
  return readdirSync(url).map((name) => {
    const [head = '', ...blocks] = readFileSync(new URL(name, url), 'utf8').split(/^# /m);
    return { name: `${folder}/${name}`, head, cases: blocks.map(readCase) };
  });
}

function readCase(block: string): LanguageCase {
  const [, title, text, expected] = /^([^\n]*)\n([\s\S]*?)\n==>\n([\s\S]*?)\n*$/.exec(block) ?? [];
  if (title === undefined || text === undefined || !expected) throw new Error(`This is not a case: ${block}`);
  return { title, text, expected };
}
