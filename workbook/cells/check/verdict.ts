import type { CheckCell } from '../../../engine/index';
import { sideOf } from '../../store/sheet-state';

export interface Verdict {
  readonly kind: 'holds' | 'broken' | 'waits';
  /** "46.0 mm, inside 38.0 mm to 55.0 mm", "stop: 60.0 mm is over 55.0 mm, too far aft". */
  readonly words: string;
  /** The value by itself. */
  readonly now: string;
}

interface Reader {
  value(path: string): number;
  shown(path: string): string;
}

/** How a check stands: whether the value keeps within its limits, said in words. */
export function verdict(cell: CheckCell, sheet: Reader): Verdict {
  const side = sideOf(cell, sheet.value);
  if (side === undefined) return { kind: 'waits', words: 'no answer yet', now: '–' };
  const now = sheet.shown(cell.name);
  if (side === 'under') {
    return {
      kind: 'broken',
      words: `stop: ${now} is under ${sheet.shown(`${cell.name}.low`)}${because(cell.below)}`,
      now,
    };
  }
  if (side === 'over') {
    return {
      kind: 'broken',
      words: `stop: ${now} is over ${sheet.shown(`${cell.name}.high`)}${because(cell.above)}`,
      now,
    };
  }
  return { kind: 'holds', words: `${now}, within its limits`, now };
}

function because(reason: string): string {
  const brief = briefly(reason);
  return brief === '' ? '' : `: ${brief}`;
}

/** A reason without a "Stop if …:" before it, which the page says itself with the limit as it is now. */
export const briefly = (reason: string): string =>
  reason
    .trim()
    .replace(/^stop if [^:]*:\s*/i, '')
    .replace(/\.$/, '');
