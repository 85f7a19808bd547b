import {
  type BlockCell,
  type BlockDescription,
  inSentence,
  type NameInfo,
  type OwnRow,
  writeQuantity,
} from '../../../engine/index';
import type { RowDraft } from '../../library/own-edits';

interface Reads {
  name(path: string): NameInfo | undefined;
  value(path: string): number;
  shown(path: string): string;
}

/** What keeps a piece from being kept as a row: nothing was measured (''), or a sentence. */
export function keptFault(
  cell: BlockCell,
  { keeps, fields, results }: BlockDescription,
  sheet: Reads,
): string | undefined {
  if (!keeps) return '';
  const typed = (name: string): boolean => (cell.fields[name] ?? '').trim() !== '';
  if (!keeps.measured.some(typed)) return '';
  const lost = keeps.lost.filter(typed);
  if (lost.length > 0) {
    const titles = lost.map((name) => inSentence(fields.find((each) => each.name === name)?.title ?? name));
    return `It can’t be kept as an own row, which has no place for what is typed here: ${titles.join(', ')}.`;
  }
  const found = Object.values(keeps.columns).filter((name) => results.some((each) => each.name === name));
  return found.some((name) => Number.isNaN(sheet.value(`${cell.name}.${name}`))) ? '' : undefined;
}

/** What was found, as a row that can be read back to the last digit. */
export function keptDraft(cell: BlockCell, { keeps, fields }: BlockDescription, sheet: Reads): RowDraft {
  const at = (name: string): string => `${cell.name}.${name}`;
  const measured = (keeps?.measured ?? []).filter((name) => (cell.fields[name] ?? '').trim() !== '');
  const titled = (name: string): string => inSentence(fields.find((each) => each.name === name)?.title ?? name);
  const text = (name: string): string => {
    const info = sheet.name(at(name));
    const si = sheet.value(at(name));
    return info?.options ? (info.options[si] ?? '') : writeQuantity(si, info?.unit ?? '');
  };
  return {
    title: (keeps?.title ?? '').replace(/\{(\w+)\}/g, (_, name: string) => sheet.shown(at(name))),
    source: `Tuned by what was measured: ${measured.map((name) => `${titled(name)} ${sheet.shown(at(name))}`).join(', ')}`,
    values: Object.fromEntries(Object.entries(keeps?.columns ?? {}).map(([column, name]) => [column, text(name)])),
  };
}

/** The row that holds just this, if it has been kept before. */
export const keptBefore = (rows: readonly OwnRow[], table: string, { values }: RowDraft): OwnRow | undefined =>
  rows.find((row) => row.table === table && sameTexts(row.values, values));

const sameTexts = (a: Readonly<Record<string, string>>, b: Readonly<Record<string, string>>): boolean =>
  Object.keys({ ...a, ...b }).every((key) => (a[key] ?? '') === (b[key] ?? ''));
