import { fromSI, sameDimension, unitNamed, type Variable } from '../../../engine/index';

/** A list with one element moved by places, as far as its ends. */
export function moved<T>(list: readonly T[], at: number, by: number): readonly T[] {
  const to = Math.max(0, Math.min(list.length - 1, at + by));
  const each = list[at];
  return each === undefined || to === at ? list : list.toSpliced(at, 1).toSpliced(to, 0, each);
}

const TEXTS = ['text', 'low', 'high', 'step'] as const;
/** A number, and what stands behind it. */
const NUMBER = /^([+\-−]?\s*[\d.]+(?:e[+-]?\d+)?)\s*(.*)$/i;

/**
 * The variable in another unit. Of the same kind, every number stays the size that it was: a bare one gets the old unit
 * written behind it. Of another kind, numbers stay and take the new unit; what is no number is left for its author.
 */
export function inOtherUnit(variable: Variable, unit: string): Variable {
  const [was, is] = [unitNamed(variable.unit), unitNamed(unit)];
  const same = was !== undefined && is !== undefined && sameDimension(was.dimension, is.dimension);
  const change = (text: string): string => {
    const [, number, behind] = NUMBER.exec(text.trim()) ?? [];
    if (number === undefined || (behind !== '' && !unitNamed(behind!))) return text;
    if (same) return behind === '' ? ofSameSize(number, variable.unit, unit) : text;
    return behind === '' ? text : withUnit(number, unit);
  };
  const texts = Object.fromEntries(TEXTS.map((key) => [key, change(variable[key])]));
  return { ...variable, ...texts, unit };
}

/** A bare number keeps its size by its old unit; a plain number has none to write and is counted over. */
function ofSameSize(number: string, was: string, is: string): string {
  if (was !== '') return withUnit(number, was);
  return withUnit(String(Number(fromSI(Number(number.replace('−', '-')), is).toPrecision(12))), is);
}

const withUnit = (number: string, unit: string): string => (unit === '' ? number : `${number} ${unit}`);
