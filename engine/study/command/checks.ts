import { atBeginning, calledIn } from '../../sheet/called';
import { filledIn, reasonPath } from '../../sheet/cells/index';
import type { CheckCell } from '../../sheet/document';
import type { Live } from '../../sheet/live';
import type { NameInfo } from '../../terms/index';
import { textOf } from './values';

/** How a check stands: inside, or beyond which limit; without any limit it stops nothing. Undefined where there is no answer. */
function standing(
  check: CheckCell,
  read: (path: string) => number,
): 'inside' | 'low' | 'high' | 'no limit' | undefined {
  const value = read(check.name);
  const limit = (side: 'low' | 'high', none: number): number =>
    check[side].trim() === '' ? none : read(`${check.name}.${side}`);
  const [low, high] = [limit('low', Number.NEGATIVE_INFINITY), limit('high', Number.POSITIVE_INFINITY)];
  if (Number.isNaN(value) || Number.isNaN(low) || Number.isNaN(high)) return undefined;
  if (check.low.trim() === '' && check.high.trim() === '') return 'no limit';
  return value < low ? 'low' : value > high ? 'high' : 'inside';
}

export function tellCheck(check: CheckCell, live: Live, names: ReadonlyMap<string, NameInfo>) {
  const read = (path: string): number => live.state.m[names.get(path)?.slot ?? -1] ?? Number.NaN;
  const shown = (path: string): string => textOf(names.get(path)!, read(path));
  const { name, title } = check;
  const stands = standing(check, read);
  if (stands === undefined) return { name, title, stop: null, line: `? ${title}: no answer\n` };
  if (stands === 'no limit') {
    return { name, title, stop: null, line: `– ${title}: ${shown(name)}, no limit yet: it stops nothing\n` };
  }
  if (stands === 'inside') return { name, title, stop: false, line: `✓ ${title}: ${shown(name)}\n` };
  const beyond = `${shown(name)} is ${stands === 'low' ? 'under' : 'over'} ${shown(`${name}.${stands}`)}`;
  const end = stands === 'low' ? 'below' : 'above';
  const inWords = (path: string): string => (names.get(path)?.options ? shown(path).replaceAll('_', ' ') : shown(path));
  const reason = filledIn(check[end], (own, k) => inWords(names.has(own) ? own : reasonPath(name, end, k)));
  return { name, title, stop: true, line: `✕ ${title}: stop, ${beyond}${reason === '' ? '' : `: ${reason}`}\n` };
}

/** Results that are under what they may not come under, where the design stops for it and no broken check watches them. */
export function tellBreaches(
  live: Live,
  names: ReadonlyMap<string, NameInfo>,
  told: readonly { readonly of: string }[],
) {
  const watched = new Set(told.map(({ of }) => of.trim()));
  const called = calledIn(live.compiled);
  return [...names.values()].flatMap((info) => {
    const { path, slot, least } = info;
    const si = live.state.m[slot]!;
    if (!least?.stops || watched.has(path) || !(si < least.at)) return [];
    const title = atBeginning(called(path));
    const line = `✕ ${title}: stop, ${textOf(info, si)} is under ${textOf(info, least.at)}: ${least.because}\n`;
    return [{ name: path, title, stop: true, line }];
  });
}
