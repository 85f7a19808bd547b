import type { LogCell } from '../../sheet/document';
import type { Live } from '../../sheet/live';
import { named } from '../../sheet/named';
import type { Slot } from '../../sheet/program';
import { formatQuantity } from '../../units/index';
import { typedSlot } from '../run/axis';
import { causeOf } from '../run/cause';
import { flownAs } from './flown-as';

/** A number measured on one flight, SI. */
export interface Measured {
  /** Row of the log, from 0. */
  readonly row: number;
  readonly path: string;
  readonly value: number;
  readonly error: number;
}

/** A log as numbers. */
export interface ReadLog {
  readonly measured: readonly Measured[];
  /** What is set flight by flight: the value in each row, as the design has it where the row doesn't say. */
  readonly conditions: readonly { readonly path: string; readonly slot: Slot; readonly values: Float64Array }[];
  /** Numbers of flights that the design can’t be flown as, with why. */
  readonly strange: readonly (Measured & { readonly reason: string })[];
}

/** Reads the numbers of a log that count, or says what is wrong with one of them. `measured`: paths of results that count. */
export function readLog(live: Live, log: LogCell, measured: readonly string[]): ReadLog | string {
  const reader = readerOf(live);
  const found: Measured[] = [];
  const columns = log.columns.map((column) => ({ column, counts: measured.includes(column.of) }));
  const set = columns.filter(({ column }) => reader.isSet(column.of)).map(({ column }) => column);
  const rows = log.rows.map((_, k) => `${log.name}.row${k + 1}`);
  try {
    const stopwatch = log.time === '' ? Number.NaN : reader.positive(`${log.name}.stopwatch`);
    for (const [row, path] of rows.entries()) {
      const time = measured.includes(log.time) ? reader.number(`${path}.time`) : Number.NaN;
      if (!Number.isNaN(time)) {
        const laps = reader.positive(`${path}.laps`);
        reader.positive(`${path}.time`);
        found.push({ row, path: log.time, value: time / laps, error: stopwatch / laps });
      }
      for (const { column, counts } of columns) {
        const value = counts ? reader.number(`${path}.${column.name}`) : Number.NaN;
        if (Number.isNaN(value)) continue;
        found.push({ row, path: column.of, value, error: reader.positive(`${log.name}.${column.name}.error`) });
      }
    }
    const variants = flownAs(live, log);
    const conditions = new Map(variants.conditions.map((each) => [each.slot, each]));
    for (const column of set) {
      const slot = typedSlot(column.of, live.compiled.program);
      const present = live.state.m[slot]!;
      const flown = conditions.get(slot)?.values;
      const values = Float64Array.from(rows, (path, row) => {
        const value = reader.number(`${path}.${column.name}`);
        return Number.isNaN(value) ? (flown?.[row] ?? present) : value;
      });
      conditions.set(slot, { path: column.of, slot, values });
    }
    const why = (row: number): string | undefined => variants.strange.get(row);
    return {
      measured: found.filter(({ row }) => why(row) === undefined),
      conditions: [...conditions.values()],
      strange: found.flatMap((each) => {
        const reason = why(each.row);
        return reason === undefined ? [] : [{ ...each, reason }];
      }),
    };
  } catch (error) {
    if (error instanceof Misread) return error.message;
    throw error;
  }
}

/** A text of the log that can't be used. */
class Misread extends Error {}

function readerOf({ compiled, state }: Live) {
  const infos = new Map(compiled.names.map((info) => [info.path, info]));
  const number = (path: string): number => {
    const slot = typedSlot(path, compiled.program);
    const value = state.m[slot]!;
    const cause = Number.isNaN(value) ? causeOf(compiled, state, slot) : undefined;
    if (cause !== undefined) throw new Misread(cause);
    return value;
  };
  return {
    number,
    isSet: (path: string): boolean => infos.get(path)?.settable ?? false,
    positive(path: string): number {
      const value = number(path);
      if (value > 0) return value;
      const { unit = '', suffix = '' } = infos.get(path) ?? {};
      throw new Misread(`${named(path)} is ${formatQuantity(value, unit, { suffix })}. Type a value greater than 0.`);
    },
  };
}
