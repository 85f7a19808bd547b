import { inSentence, listed } from '../frame/words';

/** Words that may stand at the end of what is shared no more than at the end of a line. */
const LOOSE = /^(?:on|of|at|in|by|from|to|the|and|with|for)$/i;

/**
 * What several titles have in common at their beginning, and what tells them apart: "Nose-over margin on pavement" and
 * "Nose-over margin on long grass" are "Nose-over margin" with "on pavement" and "on long grass". Titles that share nothing are
 * listed.
 */
export function splitShared(titles: readonly string[]): { readonly shared: string; readonly rest: readonly string[] } {
  const words = titles.map((title) => title.split(' '));
  const shortest = Math.min(...words.map(({ length }) => length));
  let count = 0;
  while (count < shortest - 1 && words.every((each) => each[count] === words[0]![count])) count++;
  while (count > 0 && LOOSE.test(words[0]![count - 1]!)) count--;
  const shared = words[0]!.slice(0, count).join(' ').replace(/,$/, '');
  if (shared === '') return { shared: listed([titles[0]!, ...titles.slice(1).map(inSentence)]), rest: titles };
  return { shared, rest: words.map((each) => each.slice(count).join(' ')) };
}
