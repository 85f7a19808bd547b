import { fittedResults, logResults } from '../../sheet/cells/index';
import type { FitCell, LogCell } from '../../sheet/document';
import type { Live } from '../../sheet/live';
import { named } from '../../sheet/named';
import type { Slot } from '../../sheet/program';
import { cellsOf } from '../../sheet/sheets';
import { typedSlot } from '../run/axis';
import { titled } from '../run/titled';
import { type ReadLog, readLog } from './log';

/** A number of the design that a fit may change, SI. */
interface Factor {
  readonly path: string;
  readonly slot: Slot;
  readonly start: number;
  readonly low: number;
  readonly high: number;
  readonly scale: number;
}

/** How sentences speak of fits. */
export const FIT = { kind: 'fit', words: { none: 'is no fit', all: 'fits' } } as const;

export interface FitPlan {
  readonly cell: FitCell;
  readonly log: ReadLog;
  readonly factors: readonly Factor[];
}

/** A share of the range of a factor that is 0 now: what counts as much. */
const SHARE_OF_RANGE = 0.1;

/** What a fit cell asks for, or the sentence that says why it can't be fitted. */
export const planFit = (cell: FitCell, live: Live): FitPlan | string => titled(plan(cell, live), live);

function plan(cell: FitCell, live: Live): FitPlan | string {
  const { document, faults, names } = live.compiled;
  const { name } = cell;
  const log = cellsOf(document).find((each): each is LogCell => each.kind === 'log' && each.name === cell.log);
  const fault = faults.find((each) => each.cell === log?.id);
  if (fault || !log) return fault?.message ?? `${named(name)} has no log.`;
  const settable = new Set(names.filter((info) => info.settable).map((info) => info.path));
  const measured = fittedResults(
    cell,
    logResults(log, (path) => settable.has(path)),
  );
  const read = readLog(live, log, measured);
  if (typeof read === 'string') return read;
  if (read.measured.length === 0) {
    if (read.strange[0])
      return `No flight of ${named(log.name)} counts here. The first says: ${read.strange[0].reason}`;
    return `${named(log.name)} holds no measured number that counts here. Type a time, a pull or another result into one of its rows.`;
  }
  const factors: Factor[] = [];
  for (const path of cell.factors) {
    const factor = factorOf(live, path);
    if (typeof factor === 'string') return factor;
    factors.push(factor);
  }
  // A factor is what the fit says, whichever variant was flown.
  const conditions = read.conditions.filter(({ slot }) => !factors.some((factor) => factor.slot === slot));
  return { cell, log: { ...read, conditions }, factors };
}

function factorOf({ compiled, state }: Live, path: string): Factor | string {
  const { program, names } = compiled;
  const slot = typedSlot(path, program);
  if (!program.constants.has(path)) {
    return `${named(path)} is a formula. A fit needs a number there: fit what the formula names, or type a number.`;
  }
  const typed = state.m[slot]!;
  // A blank field has a value that its block estimates, read under the same name.
  const start = Number.isNaN(typed) ? state.m[program.slotOf.get(path) ?? slot]! : typed;
  if (Number.isNaN(start)) return `${named(path)} has no value to begin with. Type one.`;
  const [low, high] = rangeOf(path);
  const [from, to] = [start < low ? Number.NEGATIVE_INFINITY : low, start > high ? Number.POSITIVE_INFINITY : high];
  const scale = start !== 0 ? Math.abs(start) : SHARE_OF_RANGE * (to - from);
  if (!Number.isFinite(scale) || scale === 0)
    return `${named(path)} is 0 and has no limits: its size can’t be told. Type another value to begin with.`;
  return { path, slot, start, low: from, high: to, scale };

  /** Of a field the range allowed, of a variable the ends of its slide. */
  function rangeOf(of: string): readonly [number, number] {
    const range = names.find((info) => info.path === of && info.range)?.range;
    if (range) return range;
    const end = (side: string, without: number): number => {
      const at = program.slotOf.get(`${of}.${side}`);
      const value = at === undefined ? Number.NaN : state.m[at]!;
      return Number.isNaN(value) ? without : value;
    };
    return [end('low', Number.NEGATIVE_INFINITY), end('high', Number.POSITIVE_INFINITY)];
  }
}
