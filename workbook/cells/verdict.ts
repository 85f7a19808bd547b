import type { CheckCell } from '../../engine/index';

export interface Verdict {
  readonly kind: 'holds' | 'broken' | 'waits';
  /** "46.0 mm, inside 38.0 mm to 55.0 mm", "stop: 60.0 mm is over 55.0 mm, too far aft". */
  readonly words: string;
}

interface Reader {
  value(path: string): number;
  shown(path: string): string;
}

/** How a check stands: whether the value keeps within its limits, said in words. */
export function verdict(cell: CheckCell, sheet: Reader): Verdict {
  const value = sheet.value(cell.name);
  const low = cell.low === '' ? Number.NEGATIVE_INFINITY : sheet.value(`${cell.name}.low`);
  const high = cell.high === '' ? Number.POSITIVE_INFINITY : sheet.value(`${cell.name}.high`);
  if (Number.isNaN(value) || Number.isNaN(low) || Number.isNaN(high)) return { kind: 'waits', words: 'no answer yet' };
  const now = sheet.shown(cell.name);
  if (value < low) {
    return { kind: 'broken', words: `stop: ${now} is under ${sheet.shown(`${cell.name}.low`)}${because(cell.below)}` };
  }
  if (value > high) {
    return { kind: 'broken', words: `stop: ${now} is over ${sheet.shown(`${cell.name}.high`)}${because(cell.above)}` };
  }
  return { kind: 'holds', words: `${now}, within its limits` };
}

const because = (reason: string): string => (reason === '' ? '' : `: ${reason}`);
