import type { CheckCell, Fault } from '../../engine/index';

export interface SheetState {
  readonly kind: 'settled' | 'working' | 'unlimited' | 'waits' | 'fault' | 'stop';
  readonly words: string;
}

/**
 * How a sheet or the whole design stands, in a few words: the worst shows. Faults are counted by place, waiting pieces by piece.
 * `unlimited`: checks without any limit, which watch and stop nothing.
 */
export function sheetState(faults: readonly Fault[], stops: number, working: boolean, unlimited: number): SheetState {
  if (working) return { kind: 'working', words: 'working' };
  if (stops > 0) return { kind: 'stop', words: counted(stops, 'stop') };
  const broken = faults.filter((fault) => fault.state === 'fault').length;
  if (broken > 0) return { kind: 'fault', words: counted(broken, 'fault') };
  const waiting = new Set(faults.map((fault) => fault.cell)).size;
  if (waiting > 0) return { kind: 'waits', words: waiting === 1 ? '1 waits' : `${waiting} wait` };
  if (unlimited > 0)
    return { kind: 'unlimited', words: unlimited === 1 ? '1 has no limit' : `${unlimited} have no limit` };
  return { kind: 'settled', words: 'up to date' };
}

const counted = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`;

/** On which side of its limits a check finds its value, if it has any; undefined where that is not known. */
export function sideOf(
  { name, low, high }: Pick<CheckCell, 'name' | 'low' | 'high'>,
  value: (path: string) => number,
): 'within' | 'under' | 'over' | 'unlimited' | undefined {
  const now = value(name);
  const least = low === '' ? Number.NEGATIVE_INFINITY : value(`${name}.low`);
  const most = high === '' ? Number.POSITIVE_INFINITY : value(`${name}.high`);
  if (Number.isNaN(now) || Number.isNaN(least) || Number.isNaN(most)) return undefined;
  if (low === '' && high === '') return 'unlimited';
  if (now < least) return 'under';
  return now > most ? 'over' : 'within';
}
