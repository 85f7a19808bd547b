import type { NameInfo, VariantColumn, VariantShares, VariantsTold } from '../../terms/index';
import { formatQuantity } from '../../units/index';
import { plain, textOf } from '../command/values';

type Names = ReadonlyMap<string, NameInfo>;

const HEADS = { baseline: 'baseline', design: 'as set' } as const;
const headOf = ({ what, name }: VariantColumn): string => (what === 'variant' ? name : HEADS[what]);

/** Each column with its results, how far they are from the reference, and what each change does to that. */
export function variantsTable(wanted: readonly string[], { from, columns }: VariantsTold, names: Names): string {
  const reference = columns.find(({ what }) => what === from)!;
  return columns.map((column) => columnText(column, reference, wanted, names)).join('');
}

function columnText(column: VariantColumn, reference: VariantColumn, wanted: readonly string[], names: Names): string {
  const results = wanted.map((path, w) => {
    const info = names.get(path)!;
    const value = column.values[w]!;
    const difference = value - reference.values[w]!;
    const apart = column === reference || Number.isNaN(difference) ? '' : ` (${signed(difference, info)})`;
    return `  ${path} ${Number.isNaN(value) ? 'no answer' : textOf(info, value)}${apart}\n`;
  });
  return [
    `${headOf(column)}\n`,
    ...results,
    ...(column.reason === '' ? [] : [`  ${column.reason}\n`]),
    ...column.gone.map((path) => `  ${path}: not in the design, kept and not counted\n`),
    ...shareLines(column, wanted, names),
  ].join('');
}

const HOW: Readonly<Record<VariantShares['method'], string>> = {
  orders: 'averaged over every order of the changes',
  alone: 'each change by itself',
};

function shareLines({ changes, shares }: VariantColumn, wanted: readonly string[], names: Names): string[] {
  const told = (of: readonly number[]): string =>
    wanted
      .map((path, w) => `${path} ${Number.isNaN(of[w]!) ? 'no answer' : signed(of[w]!, names.get(path)!)}`)
      .join(', ');
  const made = changes.map(({ path, from, to }, k) => {
    const share = shares ? `: ${told(shares.each[k]!)}` : '';
    return `  ${path} “${from}” to “${to}”${share}\n`;
  });
  if (!shares) return made;
  return [
    ...(shares.built ? [`  what was built since the baseline: ${told(shares.built)}\n`] : []),
    ...(changes.length > 1 ? [`  shares, ${HOW[shares.method]}:\n`] : []),
    ...made,
    ...(shares.method === 'alone' && changes.length > 1 ? [`  together besides: ${told(shares.together)}\n`] : []),
  ];
}

const signed = (si: number, { unit, suffix }: NameInfo): string =>
  formatQuantity(si, unit, { suffix, difference: true, sign: true });

export const variantsData = (wanted: readonly string[], { from, columns }: VariantsTold) => ({
  wanted,
  from,
  columns: columns.map(({ what, name, values, reason, changes, gone, shares }) => ({
    ...{ what, name, values: values.map(plain), reason, changes, gone },
    ...(shares
      ? {
          shares: {
            method: shares.method,
            each: shares.each.map((each) => each.map(plain)),
            together: shares.together.map(plain),
            ...(shares.built ? { built: shares.built.map(plain) } : {}),
          },
        }
      : {}),
  })),
});
