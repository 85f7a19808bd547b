import { type CheckCell, filledIn, formatQuantity, type NameInfo, reasonPath } from '../../../engine/index';
import { sideOf } from '../../store/sheet-state';

export interface Verdict {
  /** `unlimited`: it has no limit yet and stops nothing. */
  readonly kind: 'holds' | 'broken' | 'waits' | 'unlimited';
  /** "46.0 mm, inside 38.0 mm to 55.0 mm", "stop: 60.0 mm is over 55.0 mm, too far aft". */
  readonly words: string;
  /** The value by itself. */
  readonly now: string;
}

interface Reader {
  value(path: string): number;
  shown(path: string): string;
  name(path: string): unknown;
}

/** How a check stands: whether the value keeps within its limits, said in words. */
export function verdict(cell: CheckCell, sheet: Reader): Verdict {
  const side = sideOf(cell, sheet.value);
  if (side === undefined) return { kind: 'waits', words: 'no answer yet', now: '–' };
  const now = sheet.shown(cell.name);
  if (side === 'unlimited') return { kind: 'unlimited', words: `${now}, no limit yet: it stops nothing`, now };
  if (side === 'under') {
    const limit = sheet.shown(`${cell.name}.low`);
    return { kind: 'broken', words: `stop: ${now} is under ${limit}${because(reasonSaid(cell, 'below', sheet))}`, now };
  }
  if (side === 'over') {
    const limit = sheet.shown(`${cell.name}.high`);
    return { kind: 'broken', words: `stop: ${now} is over ${limit}${because(reasonSaid(cell, 'above', sheet))}`, now };
  }
  return { kind: 'holds', words: `${now}, within its limits`, now };
}

function because(reason: string): string {
  const brief = briefly(reason);
  return brief === '' ? '' : `: ${brief}`;
}

/** "stop: 0.77 is under 1: the weakest part breaks in the pull test", of a result that may not come under its least. */
export const underWords = ({ path, unit, suffix, least }: NameInfo, sheet: Pick<Reader, 'shown'>): string =>
  least ? `stop: ${sheet.shown(path)} is under ${formatQuantity(least.at, unit, { suffix })}: ${least.because}` : '';

/** The mark beside a check: a tick or a cross only where it decides something. */
export const holdsOf = ({ kind }: Verdict): boolean | undefined =>
  kind === 'waits' || kind === 'unlimited' ? undefined : kind === 'holds';

/** A reason with the values of what stands in braces in it: "the {strength.weakest} breaks". */
export const reasonSaid = (cell: CheckCell, end: 'below' | 'above', sheet: Pick<Reader, 'shown' | 'name'>): string =>
  filledIn(cell[end], (own, k) => sheet.shown(sheet.name(own) ? own : reasonPath(cell.name, end, k)));

/** A reason without a "Stop if …:" before it, which the page says itself with the limit as it is now. */
export const briefly = (reason: string): string =>
  reason
    .trim()
    .replace(/^stop if [^:]*:\s*/i, '')
    .replace(/\.$/, '');
