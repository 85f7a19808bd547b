import { sharedChange } from '../../numerics/index';
import { NOT_COMPUTED, type VariantColumn, type VariantShares, type VariantsTold } from '../../terms/index';
import type { Gathered, Tell } from '../run/gathering';
import type { PlannedColumn } from './designs';
import type { Computed, VariantsPlan } from './plan';

/** Tells the columns that are computed so far, and what makes their differences. */
export const tellVariants =
  (plan: VariantsPlan): Tell =>
  (rows) => ({ variants: told(plan, rows) });

type Find = (design: number) => Computed | undefined;

function told({ table, found, wanted }: VariantsPlan, { columns, why, sentences }: Gathered): VariantsTold {
  const find: Find = (design) => {
    const at = found[design]!;
    if (typeof at !== 'number') return at;
    const code = why[at]!;
    if (code === NOT_COMPUTED) return undefined;
    return { values: columns.map((column) => column[at]!), reason: code === 0 ? '' : sentences[code - 1]! };
  };
  const [reference, start] = [find(table.reference), find(table.start)];
  const blank = wanted.map(() => Number.NaN);
  return {
    from: table.from,
    columns: table.columns.map((column): VariantColumn => {
      const { what, name, changes, gone } = column;
      const whole = find(column.design);
      const shares =
        whole && reference && start && column.design !== table.reference
          ? sharesOf(column, { whole, reference, start, find, built: table.start !== table.reference })
          : undefined;
      return {
        ...{ what, name, changes, gone, done: whole !== undefined },
        ...{ values: whole?.values ?? blank, reason: whole?.reason ?? '' },
        ...(shares ? { shares } : {}),
      };
    }),
  };
}

interface Ends {
  readonly whole: Computed;
  readonly reference: Computed;
  readonly start: Computed;
  readonly find: Find;
  /** Pieces came or went between the reference and the start. */
  readonly built: boolean;
}

/** Undefined where not all that they rest on is computed. */
function sharesOf(column: PlannedColumn, { whole, reference, start, find, built }: Ends): VariantShares | undefined {
  const { changes, method, parts } = column;
  const found = parts.map(find);
  if (!found.every((each) => each !== undefined)) return undefined;
  const results = whole.values.map((_, w) => w);
  const before = built ? { built: results.map((w) => start.values[w]! - reference.values[w]!) } : {};
  if (method === 'orders') {
    const shared = results.map((w) => sharedChange(found.map(({ values }) => values[w]!)));
    // A design on the way that has no answer spoils the average, but not what each does alone.
    if (!shared.some((shares, w) => shares.some(Number.isNaN) && !Number.isNaN(whole.values[w]! - start.values[w]!))) {
      const each = changes.map((_, k) => shared.map((shares) => shares[k]!));
      return { method, each, together: results.map(() => 0), ...before };
    }
  }
  const single = method === 'orders' ? changes.map((_, k) => found[1 << k]!) : found;
  const each = single.map(({ values }) => results.map((w) => values[w]! - start.values[w]!));
  const together = results.map((w) =>
    each.reduce(
      (left, shares) => left - (Number.isNaN(shares[w]!) ? 0 : shares[w]!),
      whole.values[w]! - start.values[w]!,
    ),
  );
  return { method: 'alone', each, together, ...before };
}
