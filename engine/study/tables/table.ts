import type { ColumnTable } from 'arquero';
import type { Gathered } from '../run/gathering';
import type { Column } from './column';
import { groupRows } from './groups';
import { keepRows } from './keep';
import { withoutNumbers } from './reasons';
import { inOrder } from './sort';
import type { TableView } from './told';

/** What a view shows: columns, and which of their places stand in which row. */
export interface Shown {
  readonly columns: readonly Column[];
  /** Row → place in the columns. */
  readonly index: Uint32Array;
  /** Why the design at a place has no answer; '' for one that has, and for groups. */
  reason(place: number): string;
  /** Place of the row that a design of the sweep is in. */
  placeOf(sample: number): number;
}

/** The results of one sweep as a table. */
export interface ResultTable {
  readonly causes: readonly { readonly reason: string; readonly count: number }[];
  /** `options(path)`: what an axis that is a choice may be. */
  show(view: TableView, options: (path: string) => readonly string[] | undefined): Shown;
}

type Arquero = typeof import('arquero');

export function openTable({ table, BitSet }: Arquero, source: Gathered): ResultTable {
  const { axes, wanted, columns, why, sentences, total } = source;
  const general = sentences.map(withoutNumbers);
  const paths = [...axes.map((axis) => axis.path), ...wanted];
  const numbers = new Map<string, Float64Array>([
    ...axes.map((axis, a) => [axis.path, alongAxis(source, a)] as const),
    ...wanted.map((path, w) => [path, columns[w]!] as const),
  ]);
  const designs = table(Object.fromEntries(numbers), paths);

  function rowsOf(view: TableView, options: (path: string) => readonly string[] | undefined): ColumnTable {
    const keeps = keepRows(view, { numbers, why, general, options });
    if (!keeps) return designs;
    const filter = new BitSet(total);
    for (let row = 0; row < total; row++) if (keeps(row)) filter.set(row);
    return designs.create({ filter });
  }

  return {
    causes: countCauses(why, general),
    show(view, options) {
      const kept = rowsOf(view, options);
      if (view.groups.length > 0) {
        const { columns: made, groupOf } = groupRows(kept, view, { axes, numbers, why, wanted });
        const grouped = table(Object.fromEntries(made.map((column) => [column.key, column.numbers])));
        return {
          columns: made,
          index: inOrder(grouped, view.sort, view.descending).indices() as Uint32Array,
          reason: () => '',
          placeOf: groupOf,
        };
      }
      const wantedColumns = paths.filter((path) => view.columns.length === 0 || view.columns.includes(path));
      const ordered = view.columns.length === 0 ? wantedColumns : view.columns.filter((path) => numbers.has(path));
      return {
        columns: ordered.map((path) => ({ key: path, path, numbers: numbers.get(path)! })),
        index: inOrder(kept, view.sort, view.descending).indices() as Uint32Array,
        reason: (sample) => (why[sample] === 0 ? '' : (sentences[why[sample]! - 1] ?? '')),
        placeOf: (sample) => sample,
      };
    },
  };
}

/** The values of one axis, a sample each: the last axis runs fastest. */
function alongAxis({ axes, total }: Gathered, a: number): Float64Array {
  const { values } = axes[a]!;
  const stride = axes.slice(a + 1).reduce((product, axis) => product * axis.values.length, 1);
  const column = new Float64Array(total);
  for (let sample = 0; sample < total; sample++) {
    column[sample] = values[Math.floor(sample / stride) % values.length]!;
  }
  return column;
}

function countCauses(why: Uint16Array, general: readonly string[]): { reason: string; count: number }[] {
  const perSentence = new Uint32Array(general.length + 1);
  for (const code of why) if (code <= general.length) perSentence[code]!++;
  const counts = new Map<string, number>();
  for (const [k, reason] of general.entries()) counts.set(reason, (counts.get(reason) ?? 0) + perSentence[k + 1]!);
  return [...counts].map(([reason, count]) => ({ reason, count })).sort((a, b) => b.count - a.count);
}
