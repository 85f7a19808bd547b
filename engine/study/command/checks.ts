import type { CheckCell } from '../../sheet/document';
import type { Live } from '../../sheet/live';
import type { NameInfo } from '../../terms/index';
import { textOf } from './values';

/** How a check stands: inside, or beyond which limit; undefined where there is no answer. */
function standing(check: CheckCell, read: (path: string) => number): 'inside' | 'low' | 'high' | undefined {
  const value = read(check.name);
  const limit = (side: 'low' | 'high', none: number): number =>
    check[side].trim() === '' ? none : read(`${check.name}.${side}`);
  const [low, high] = [limit('low', Number.NEGATIVE_INFINITY), limit('high', Number.POSITIVE_INFINITY)];
  if (Number.isNaN(value) || Number.isNaN(low) || Number.isNaN(high)) return undefined;
  return value < low ? 'low' : value > high ? 'high' : 'inside';
}

export function tellCheck(check: CheckCell, live: Live, names: ReadonlyMap<string, NameInfo>) {
  const read = (path: string): number => live.state.m[names.get(path)?.slot ?? -1] ?? Number.NaN;
  const shown = (path: string): string => textOf(names.get(path)!, read(path));
  const { name, title } = check;
  const stands = standing(check, read);
  if (stands === undefined) return { name, title, stop: null, line: `? ${title}: no answer\n` };
  if (stands === 'inside') return { name, title, stop: false, line: `✓ ${title}: ${shown(name)}\n` };
  const beyond = `${shown(name)} is ${stands === 'low' ? 'under' : 'over'} ${shown(`${name}.${stands}`)}`;
  const reason = stands === 'low' ? check.below : check.above;
  return { name, title, stop: true, line: `✕ ${title}: stop, ${beyond}${reason === '' ? '' : `: ${reason}`}\n` };
}
