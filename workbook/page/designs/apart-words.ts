import type { Apart } from '../../store/hangar';
import { momentWords } from '../../store/moment-words';

/** Differences that are told by name; the rest is counted. */
const NAMED = 3;

/** How a design is told from the one of the same title that was changed last. */
export function apartWords({ from, differences: { texts, here, there } }: Apart, now: number): string {
  const other = `the one changed ${momentWords(from.changed, now)}`;
  const said = [
    ...texts.map((each) => `${each.title} is ${quoted(each.here)}, there ${quoted(each.there)}`),
    ...here.map((title) => `“${title}” is only here`),
    ...there.map((title) => `“${title}” is only there`),
  ];
  if (said.length === 0) return `The same model as ${other}, with other words, charts or studies.`;
  const more = said.length - NAMED;
  const rest = more > 0 ? `; ${more} more ${more === 1 ? 'thing differs' : 'things differ'}` : '';
  return `Told from ${other}: ${said.slice(0, NAMED).join('; ')}${rest}.`;
}

const quoted = (text: string): string => (text === '' ? 'blank' : `“${text}”`);
