import { fromSI } from '../../units/index';
import { asked, readAny } from './form';

/** Limits of a slide: the usual ones, wide enough for what was typed. */
export function around(field: keyof typeof asked, typed: string, low: string, high: string): readonly [string, string] {
  const { unit } = asked[field];
  const si = readAny(field, typed);
  const [least, most] = [readAny(field, low), readAny(field, high)];
  const text = (value: number): string => `${Number(fromSI(value, unit).toPrecision(2))} ${unit}`;
  return [si * 0.7 < least ? text(si * 0.7) : low, si * 1.4 > most ? text(si * 1.4) : high];
}
