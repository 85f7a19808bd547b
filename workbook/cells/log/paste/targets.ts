import { type LogCell, type NameInfo, type UnitSet, unitNamed } from '../../../../engine/index';
import { matchHeading, type PasteColumn, type Target } from '../../shared/paste-columns';
import { looksLikeDay } from './day';

const SECONDS = unitNamed('s')!.dimension;
const VOLUMES = unitNamed('mL')!.dimension;
const NUMBER = unitNamed('')?.dimension;

/** What a column may say of a flight, whatever the log measures; with other words for it, in small letters (common practice, no source). */
const FIXED: readonly (Target & { readonly also: readonly string[] })[] = [
  { key: 'label', title: 'Flight', unit: '', also: ['flight', 'no', 'no.', 'nr', '#', 'number'] },
  { key: 'date', title: 'Day', unit: '', also: ['day', 'date', 'flown on'] },
  { key: 'laps', title: 'Laps timed', unit: '', dimension: NUMBER, also: ['laps', 'lap count'] },
  { key: 'time', title: 'Time', unit: 's', dimension: SECONDS, also: ['time', 'total', 'total time', 'seconds'] },
  { key: 'lap', title: 'Time of one lap', unit: 's', dimension: SECONDS, also: ['lap', 'lap time', 'split'] },
  { key: 'splits', title: 'Times of single laps', unit: '', also: ['splits', 'lap times'] },
  { key: 'all_laps', title: 'All laps of the flight', unit: '', dimension: NUMBER, also: ['all laps', 'laps flown'] },
  { key: 'fuel_in', title: 'Fuel in', unit: 'mL', dimension: VOLUMES, also: ['fuel', 'filled'] },
  { key: 'fuel_left', title: 'Fuel left', unit: 'mL', dimension: VOLUMES, also: ['left'] },
  { key: 'line_set', title: 'Lines', unit: '', also: ['line set', 'lines'] },
  { key: 'flown_as', title: 'Flown as', unit: '', also: ['variant', 'version', 'design'] },
  { key: 'propeller', title: 'Propeller', unit: '', also: ['prop'] },
  { key: 'needle', title: 'Needle', unit: '', also: ['clicks'] },
  { key: 'plug', title: 'Plug', unit: '', also: [] },
  { key: 'note', title: 'Remarks', unit: '', also: ['note', 'notes', 'remark', 'comment', 'comments', 'weather'] },
];

/** Columns that may stand in a text more than once. */
export const AGAIN: ReadonlySet<string> = new Set(['lap']);
/** Before the name of a column of the log. */
export const OWN = 'column.';

/** All that a column may be matched to in this log. */
export const targetsOf = (cell: LogCell, name: (path: string) => NameInfo | undefined): readonly Target[] => [
  ...FIXED,
  ...cell.columns.map(({ name: column, of }): Target => {
    const info = name(of);
    const number = info && !info.options;
    return {
      key: `${OWN}${column}`,
      title: info?.title ?? of,
      unit: number ? info.unit : '',
      dimension: number ? info.dimension : undefined,
    };
  }),
];

/** Each column as its heading says: a column of the log by its name or title, the rest by the words for it. */
export function proposedByHeading(
  heading: readonly string[],
  targets: readonly Target[],
  set: UnitSet,
): readonly PasteColumn[] {
  const said = (words: string): Target | undefined =>
    targets.find(({ key, title }) => key === `${OWN}${words.replaceAll(' ', '_')}` || title.toLowerCase() === words) ??
    targets.find(({ key }) =>
      FIXED.some(
        (each) =>
          each.key === key && (key.replaceAll('_', ' ') === words.replaceAll('_', ' ') || each.also.includes(words)),
      ),
    ) ??
    (/^(lap|split|l)( time)? ?\d+$/.test(words) ? targets.find(({ key }) => key === 'lap') : undefined);
  return matchHeading(heading, said, set, AGAIN);
}

/** Columns of a text without a heading, by what stands in them: a day, a time in minutes and seconds; the rest is for a person to say. */
export function proposedByContent(lines: readonly (readonly string[])[]): readonly PasteColumn[] {
  const taken = new Set<string>();
  const once = (to: string, unit: string): PasteColumn => {
    if (taken.has(to)) return { head: '', to: '', unit: '' };
    taken.add(to);
    return { head: '', to, unit };
  };
  return (lines[0] ?? []).map((_, k) => {
    const texts = lines.map((fields) => (fields[k] ?? '').trim()).filter((text) => text !== '');
    const all = (test: (text: string) => boolean): boolean => texts.length > 0 && texts.every(test);
    if (all(looksLikeDay)) return once('date', '');
    if (all((text) => /^\d+:\d{2}([.,]\d+)?$/.test(text))) return once('time', 's');
    return { head: '', to: '', unit: '' };
  });
}

/** A first line names the columns if it holds words alone, or a word that is known. */
export function isHeading(first: readonly string[], proposed: readonly PasteColumn[]): boolean {
  if (proposed.some(({ to }) => to !== '')) return true;
  return first.every((field) => !/^\s*[\d.,:/-]+\s*$/.test(field) || field.trim() === '');
}
