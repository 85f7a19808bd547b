/** Roles that are not called in words as in formulas. */
const WORDS: Readonly<Record<string, string>> = {
  body: 'fuselage',
  parts: 'table of weight and balance',
  flight: 'level flight',
  lap: 'lap in wind',
  line_shape: 'shape of the lines',
  control: 'control linkage',
  found_cg: 'finding of the CG',
};

/** What a builder calls whatever fills a role, in the middle of a sentence: "fuselage". */
export const roleWords = (role: string): string => WORDS[role] ?? role.replaceAll('_', ' ');

/** Of which there is some and not one. */
const NO_ARTICLE: ReadonlySet<string> = new Set(['air', 'flight']);

/** The same with its article: "a fuselage", "an engine", "leadouts". */
export function roleWithArticle(role: string): string {
  const words = roleWords(role);
  if (words.endsWith('s') || NO_ARTICLE.has(role)) return words;
  return `${/^[aeiou]/.test(words) ? 'an' : 'a'} ${words}`;
}
