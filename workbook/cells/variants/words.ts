import {
  bound,
  type CheckCell,
  formatQuantity,
  type NameInfo,
  type VariantChange,
  type VariantColumn,
  type VariantShares,
  type VariantsTold,
} from '../../../engine/index';
import type { Sheet } from '../../store/sheet';

/** What a column is called. */
export const headOf = ({ what, name }: Pick<VariantColumn, 'what' | 'name'>): string =>
  what === 'baseline' ? 'Baseline' : what === 'design' ? 'As set' : name;

/** What is changed at a path: a variable goes by its own title, anything else also says of what it is. */
export function titleAt(sheet: Pick<Sheet, 'name' | 'placeTitle' | 'cellHolding'>, path: string): string {
  const info = sheet.name(path);
  if (info?.kind === 'variable') return info.title;
  return sheet.placeTitle({ cell: sheet.cellHolding(path) ?? '', path });
}

/** The column that differences are from. */
export const referenceOf = ({ from, columns }: VariantsTold): VariantColumn =>
  columns.find(({ what }) => what === from)!;

/** "+0.41 N", "no change"; blank where it isn't known. */
export function effectWords(si: number, info: NameInfo): string {
  if (Number.isNaN(si)) return '';
  const text = formatQuantity(si, info.unit, { suffix: info.suffix, difference: true, sign: true });
  return /[1-9]/.test(text) ? text : 'no change';
}

/** Paths that any column has otherwise than the reference, in the order of the columns. */
export const changedPaths = ({ columns }: VariantsTold): readonly string[] => [
  ...new Set(columns.flatMap(({ changes }) => changes.map(({ path }) => path))),
];

export const changeAt = ({ changes }: VariantColumn, path: string): VariantChange | undefined =>
  changes.find((change) => change.path === path);

/** What stands at a path in the reference. */
export const textInReference = ({ columns }: VariantsTold, path: string): string =>
  columns.flatMap((column) => changeAt(column, path) ?? [])[0]?.from ?? '';

/** What the change at a path does to a result, SI; NaN where that isn't known. */
export function shareOf({ changes, shares }: VariantColumn, path: string, wanted: number): number {
  const k = changes.findIndex((change) => change.path === path);
  return shares?.each[k]?.[wanted] ?? Number.NaN;
}

/** How the shares came about, a sentence for each way that is taken. */
export function methodSentences({ columns }: VariantsTold): readonly string[] {
  const ways = new Set(columns.flatMap(({ shares, changes }) => (shares && changes.length > 1 ? [shares.method] : [])));
  return (['orders', 'alone'] as const).filter((way) => ways.has(way)).map((way) => METHODS[way]);
}

const METHODS: Readonly<Record<VariantShares['method'], string>> = {
  orders:
    'What each change does is averaged over every order in which the changes can be made; together they make the whole difference.',
  alone:
    'Where there are many changes, a formula among them, or one that does not fly without the others, each is told by itself, and below what they do together besides.',
};

/** The check that stops a design with this value, by the limits of the design as set. */
export const stopAt = (
  checks: readonly CheckCell[],
  path: string,
  si: number,
  value: (path: string) => number,
): CheckCell | undefined =>
  checks.find(({ of, name }) => of.trim() === path && (si < value(`${name}.low`) || si > value(`${name}.high`)));

/** A typed number as it is read: its sign and its unit as everywhere. */
export function typedWords(text: string): string {
  const [, number, unit] = /^(-?[\d.e+-]+) (.+)$/.exec(text) ?? [];
  return number === undefined ? text.replace(/^-/, '−') : bound(number.replace(/^-/, '−'), unit!);
}
