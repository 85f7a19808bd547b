import type { Live } from '../../sheet/live';
import type { NameInfo } from '../../terms/index';
import { typedSlot } from '../run/axis';
import type { Gathered } from '../run/gathering';
import { fileOf } from './files';
import { openTable, type ResultTable, type Shown } from './table';
import type { TableAnswer, TableFormat, TableView } from './told';

/** Rows that may be asked for at once. */
const MOST_ROWS = 2000;

/** The tables of one engine. */
export interface Tables {
  answer(live: Live, rows: Gathered | undefined, view: TableView, from: number, to: number): Promise<TableAnswer>;
  file(
    live: Live,
    rows: Gathered | undefined,
    view: TableView,
    format: TableFormat,
  ): Promise<readonly (string | Uint8Array<ArrayBuffer>)[]>;
}

interface Held {
  readonly rows: Gathered;
  readonly table: ResultTable;
  /** The last view and what it shows: scrolling asks for the same again and again. */
  view: string;
  shown: Shown | undefined;
}

export function startTables(): Tables {
  const held = new Map<string, Held>();
  let library: Promise<typeof import('arquero')> | undefined;
  // Most sheets have no table: its code is fetched when there is one.
  const arquero = () => {
    library ??= import('arquero');
    return library;
  };

  async function show(live: Live, rows: Gathered, view: TableView): Promise<{ table: ResultTable; shown: Shown }> {
    let found = held.get(view.series);
    if (found?.rows !== rows) {
      found = { rows, table: openTable(await arquero(), rows), view: '', shown: undefined };
      held.set(view.series, found);
    }
    // JSON has no NaN, which here means no limit.
    const key = JSON.stringify(view);
    if (found.view !== key || !found.shown) {
      const options = new Map(live.compiled.names.map((info) => [info.path, info.options]));
      found.shown = found.table.show(view, (path) => options.get(path));
      found.view = key;
    }
    return { table: found.table, shown: found.shown };
  }

  return {
    async answer(live, rows, view, from, to) {
      if (!rows) {
        held.delete(view.series);
        return { ...NOTHING, state: 'waits' };
      }
      const { table, shown } = await show(live, rows, view);
      const places = shown.index.subarray(from, Math.min(to, from + MOST_ROWS));
      const { sample, exact } = presentSample(live, rows);
      const place = sample < 0 ? -1 : shown.placeOf(sample);
      return {
        state: 'ready',
        columns: shown.columns.map(({ numbers: _, ...column }) => column),
        total: rows.total,
        rows: shown.index.length,
        from,
        values: shown.columns.map(({ numbers }) => Float64Array.from(places, (at) => numbers[at]!)),
        samples: view.groups.length > 0 ? new Uint32Array(0) : places.slice(),
        reasons: Array.from(places, shown.reason),
        present: place < 0 ? -1 : shown.index.indexOf(place),
        exact: exact && view.groups.length === 0,
        causes: table.causes,
      };
    },
    async file(live, rows, view, format) {
      if (!rows) return [];
      const { shown } = await show(live, rows, view);
      const names = new Map(live.compiled.names.map((info): [string, NameInfo] => [info.path, info]));
      return fileOf(await arquero(), shown, names, format);
    },
  };
}

const NOTHING: Omit<TableAnswer, 'state'> = {
  columns: [],
  total: 0,
  rows: 0,
  from: 0,
  values: [],
  samples: new Uint32Array(0),
  reasons: [],
  present: -1,
  exact: false,
  causes: [],
};

/** The design of a sweep that is nearest to the present one along every axis; −1 where that lies outside of an axis. */
function presentSample({ compiled, state }: Live, { axes }: Gathered): { sample: number; exact: boolean } {
  const options = new Map(compiled.names.map((info) => [info.path, info.options]));
  let sample = 0;
  let exact = true;
  for (const { path, values } of axes) {
    const now = state.m[typedSlot(path, compiled.program)]!;
    const nearest = nearestOf(values, now);
    if (nearest < 0) return { sample: -1, exact: false };
    const same = values[nearest] === now;
    if (!same && options.get(path)) return { sample: -1, exact: false };
    exact &&= same;
    sample = sample * values.length + nearest;
  }
  return { sample, exact };
}

function nearestOf(values: Float64Array, now: number): number {
  const least = values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  const most = values.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  if (!(now >= least && now <= most)) return -1;
  let best = 0;
  for (const [k, value] of values.entries()) if (Math.abs(value - now) < Math.abs(values[best]! - now)) best = k;
  return best;
}
