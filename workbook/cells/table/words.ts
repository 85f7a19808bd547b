import { formatNumber, fromSI, type NameInfo, type TableAnswer, type TableColumn } from '../../../engine/index';
import { spaced } from '../shared/progress-words';

/** Rows of a trial series differ little from one to the next: three digits would make many of them look alike. */
const DIGITS = 5;

const measureWords = {
  count: 'designs',
  unanswered: 'without an answer',
  least: 'least',
  greatest: 'greatest',
  mean: 'mean',
  median: 'median',
} as const;

export interface Heading {
  readonly title: string;
  /** Unit, and of a group what is said of its designs; '' where there is neither. */
  readonly below: string;
}

export function headingOf({ path, measure }: TableColumn, info: NameInfo | undefined): Heading {
  if (path === '') return { title: measure ? measureWords[measure] : '', below: '' };
  const unit = info ? info.suffix || info.unit : '';
  const said = measure ? measureWords[measure] : '';
  return { title: info?.title ?? path, below: [unit, said].filter(Boolean).join(', ') };
}

/** What stands in a row: an option, a count, a number in the unit of its head, a dash where there is no answer. */
export function entryOf(
  { path }: TableColumn,
  info: NameInfo | undefined,
  si: number,
  optionTitle?: (path: string, option: string) => string | undefined,
): string {
  if (path === '') return spaced(si);
  if (info?.options) {
    const option = info.options[si];
    return option === undefined ? '–' : (optionTitle?.(path, option) ?? option.replaceAll('_', ' '));
  }
  return formatNumber(Number.isNaN(si) ? si : fromSI(si, info?.unit ?? ''), DIGITS);
}

/** How many rows there are, of how many. */
export function countWords({ rows, total }: Pick<TableAnswer, 'rows' | 'total'>, grouped: boolean): string {
  if (grouped) return `${spaced(rows)} ${rows === 1 ? 'group' : 'groups'} of ${spaced(total)} designs`;
  return rows === total ? `${spaced(total)} designs` : `${spaced(rows)} of ${spaced(total)} designs`;
}
