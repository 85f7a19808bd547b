import type { Fault } from '../../engine/index';

export interface SheetState {
  readonly kind: 'settled' | 'working' | 'waits' | 'fault';
  readonly words: string;
}

/** The state of the whole sheet in a few words. Faults are counted by place, waiting pieces by cell. */
export function sheetState(faults: readonly Fault[], working: boolean): SheetState {
  if (working) return { kind: 'working', words: 'working' };
  const broken = faults.filter((fault) => fault.state === 'fault').length;
  if (broken > 0) return { kind: 'fault', words: broken === 1 ? '1 fault' : `${broken} faults` };
  const waiting = new Set(faults.map((fault) => fault.cell)).size;
  if (waiting > 0) return { kind: 'waits', words: waiting === 1 ? '1 cell waits' : `${waiting} cells wait` };
  return { kind: 'settled', words: 'all settled' };
}
