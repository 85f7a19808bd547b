import type { Template } from './study';

/** What `@name` stands for in a design, and its title in the middle of a sentence. */
export interface Meant {
  readonly path: string;
  readonly title: string;
}

const MARK = /@(@?)([a-z][a-z0-9_]*)((?:\.[a-z][a-z0-9_]*)*)/g;

/** The names that a text of a study speaks of. */
const namesIn = (text: string): readonly string[] => [...text.matchAll(MARK)].map(([, , name]) => name!);

/** A text with the design's own names in place of the marks. Throws RangeError for a name that nothing has: a mistake in the study. */
export function namedText(text: string, meant: ReadonlyMap<string, Meant>): string {
  return text.replace(MARK, (_, title: string, name: string, rest: string) => {
    const found = meant.get(name);
    if (!found) throw new RangeError(`Nothing of the study is called @${name}`);
    return title ? found.title : found.path + rest;
  });
}

/** A template with the design's own names, without what speaks of names that are `missing`; undefined where nothing is left of it. */
export function namedPiece(template: Template, meant: ReadonlyMap<string, Meant>, missing: ReadonlySet<string>) {
  const lacks = (value: unknown): boolean =>
    typeof value === 'string' && namesIn(value).some((name) => missing.has(name));
  const named = (value: unknown, key: string): unknown => {
    if (typeof value === 'string') return lacks(value) && WITHOUT.has(key) ? '' : namedText(value, meant);
    if (Array.isArray(value)) return value.filter((each) => !lacking(each)).map((each) => named(each, key));
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, named(each, name)]));
  };
  /** A row, an axis or a path of a list that can't be without what is missing. */
  const lacking = (each: unknown): boolean =>
    lacks(typeof each === 'object' && each !== null ? (each as { of?: unknown }).of : each);
  if (lacks(template.of) || lacks(template.across)) return undefined;
  const { name: own, ...rest } = template;
  return { ...(named(rest, '') as Readonly<Record<string, unknown>>), name: meant.get(own)!.path };
}

/** Keys that may be left blank. */
const WITHOUT: ReadonlySet<string> = new Set(['lines', 'rank', 'per', 'try_this']);
