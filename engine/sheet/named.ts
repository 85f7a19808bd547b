import { atBeginning, type Called } from './called';

/**
 * Stands in a sentence for whatever has this path. What a person calls it is known only when everything is laid, and
 * `withTitles` puts that in its place.
 */
export const named = (path: string): string => `⟦${path}⟧`;

/** The same where it may be that nothing has this path: then it stands in quotes. */
export const quoted = (path: string): string => `⟦${path}|“${path}”⟧`;

/** Several of them, as a list. */
export const allNamed = (paths: readonly string[]): string => paths.map(named).join(', ');

/** The options of what has this path: each by its title, else by its own word. */
export const allOptions = (of: string, options: readonly string[]): string =>
  options.map((option) => `⟦${of}.${option}|${option.replaceAll('_', ' ')}⟧`).join(', ');

const NAMED = /((?:\. )?)⟦([^⟧|]*)(?:\|([^⟧]*))?⟧/g;

/** The sentences with what everything is called; a capital stands at the beginning of each. */
export const withTitles = (sentences: string, called: Called): string =>
  sentences.replace(NAMED, (_, point: string, path: string, word: string | undefined, at: number) => {
    const words = called(path);
    const said = words === path && word !== undefined ? word : words;
    return point + (at === 0 || point !== '' ? atBeginning(said) : said);
  });
