import { bound, inSentence } from '../../engine/index';
import type { Sheet } from '../store/sheet';

type Reading = Pick<Sheet, 'name' | 'shown' | 'cells' | 'document'>;

/** What a design is known by and flown in: of the piece of this kind, this result. */
const CONDITIONS = [
  ['parts', 'mass'],
  ['lines', 'length'],
  ['flight', 'lap_time'],
  ['air', 'density'],
  ['air', 'wind'],
] as const;

const UNITS = { metric: 'Metric units.', inch_pound: 'Inch-pound units.' } as const;

/** What the figure shows, of which design, under which conditions, in which units. */
export function captionOf(titles: readonly string[], sheet: Reading): string {
  const { title, date, units } = sheet.document.value;
  const design = [title || 'Untitled design', date].filter((each) => each !== '').join(', ');
  const conditions = conditionsOf(sheet);
  const named = titles.length === 1 ? titles : titles.map((each, k) => `(${String.fromCharCode(97 + k)}) ${each}`);
  return [
    ...named.map(captionSentence),
    conditions.length === 0 ? captionSentence(design) : `${design}: ${conditions.join(', ')}.`,
    UNITS[units],
  ].join(' ');
}

/** A title as a sentence. */
export const captionSentence = (words: string): string => (/[.?!]$/.test(words) ? words : `${words}.`);

function conditionsOf({ cells, name, shown }: Reading): readonly string[] {
  return CONDITIONS.flatMap(([kind, result]) => {
    const cell = cells.value.find((each) => each.kind === kind || (each.kind === 'model' && each.of === kind));
    const info = cell && name(`${cell.name}.${result}`);
    const value = info ? shown(info.path) : '–';
    return info && value !== '–' ? [bound(inSentence(info.title), value)] : [];
  });
}
