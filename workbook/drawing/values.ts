import { formatQuantity, type NameInfo } from '../../engine/index';

/** Every name of the open document by its path. */
export type Names = ReadonlyMap<string, NameInfo>;

/** The value at a path, or undefined where there is no such name or no answer. */
export function valueAt(path: string, names: Names, values: Float64Array): number | undefined {
  const info = names.get(path);
  const value = info === undefined ? undefined : values[info.slot];
  return value === undefined || Number.isNaN(value) ? undefined : value;
}

/** A value as people read it: picked option, number with unit, or number with what is said in place of a unit. */
export function valueText(info: NameInfo, value: number): string {
  if (info.options) return (info.options[value] ?? '–').replaceAll('_', ' ');
  return quantityText(info, value);
}

/** The same of what is never picked. */
export const quantityText = (
  { unit, suffix, ways }: Pick<NameInfo, 'unit' | 'suffix' | 'ways'>,
  value: number,
): string => formatQuantity(value, unit, { suffix, ways });

/** A limit of such a quantity: its zero is said as a number. */
export const limitText = (info: Pick<NameInfo, 'unit' | 'suffix' | 'ways'>, limit: number): string =>
  quantityText({ ...info, ways: info.ways && [info.ways[0], info.ways[1]] }, limit);
