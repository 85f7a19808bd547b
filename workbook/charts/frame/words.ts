export { capital, inSentence, listed } from '../../../engine/index';

/** Titles without the end that all of them share behind a comma: "0.30 mm, stranded" beside "0.38 mm, stranded" is "0.30 mm". */
export function withoutSharedEnd(titles: readonly string[]): readonly string[] {
  const end = /,[^,]*$/.exec(titles[0] ?? '')?.[0];
  const shared = titles.length > 1 && end !== undefined && titles.every((title) => title.endsWith(end));
  return shared ? titles.map((title) => title.slice(0, -end.length)) : titles;
}

/** "3 of 14 parts have no answer and are left out." */
export function leftOut(missing: number, total: number, things: string): string {
  if (missing === 0) return '';
  return `${missing} of ${total} ${things} ${missing === 1 ? 'has' : 'have'} no answer and ${missing === 1 ? 'is' : 'are'} left out.`;
}
