import type { Spread } from '../../numerics/index';
import type { NameInfo } from '../../protocol';
import type { Live } from '../../sheet/live';
import { formatQuantity } from '../../units/index';
import { typedSlot } from '../axes';
import type { SpreadInput, SpreadOfResult } from '../spread';
import { meant } from './values';

type Names = ReadonlyMap<string, NameInfo>;

const KINDS = ['normal', 'uniform', 'triangular'] as const;

/** Reads "normal 2 g" for a name, or says what is wrong. The middle is what is typed there now. */
export function readSpread(live: Live, names: Names, path: string, text: string): SpreadInput | string {
  const info = names.get(path);
  if (!info?.settable || info.options) {
    const settable = [...names.values()].filter((name) => name.settable && !name.options).map((name) => name.path);
    return `Nothing is called ${path} that a number can be typed into.${meant(path, settable)}`;
  }
  const [, word, amountText] = /^\s*(\S+)\s+(.+)$/.exec(text) ?? [];
  const kind = KINDS.find((each) => each === word);
  if (!kind || amountText === undefined) {
    return `${path} is to spread by “${text}”. Write a kind and an amount, such as "normal 2 ${info.unit}"; the kinds are ${KINDS.join(', ')}.`;
  }
  const amount = live.compiled.constant(path, amountText);
  if (amount === undefined || !(amount > 0)) {
    return `${path} is to spread by “${amountText}”, which is no amount greater than 0. Write a number with its unit, such as "${kind} 2 ${info.unit}".`;
  }
  const slot = typedSlot(path, live.compiled.program);
  const middle = live.state.m[slot]!;
  if (Number.isNaN(middle)) return `${path} has no value to spread around. Type one.`;
  return { path, slot, spread: spreadOf(kind, middle, amount) };
}

function spreadOf(kind: (typeof KINDS)[number], middle: number, amount: number): Spread {
  if (kind === 'normal') return { kind, middle, deviation: amount };
  const [low, high] = [middle - amount, middle + amount];
  return kind === 'uniform' ? { kind, low, high } : { kind, low, mode: middle, high };
}

/** What the spread makes of each result, in its unit, and the shares of its variance. */
export function spreadTable(told: readonly SpreadOfResult[], inputs: readonly SpreadInput[], names: Names): string {
  return told
    .map((result) => {
      const { unit, suffix } = names.get(result.path)!;
      const value = (si: number): string => formatQuantity(si, unit, { suffix });
      const apart = formatQuantity(result.deviation, unit, { suffix, difference: true });
      const missing = result.missing > 0 ? `; ${result.missing} designs have no answer` : '';
      const head = `${result.path}: mean ${value(result.mean)}, standard deviation ${apart}; 5 % below ${value(result.low)}, half below ${value(result.middle)}, 95 % below ${value(result.high)}${missing}\n`;
      const shares = inputs.map(
        ({ path }, k) =>
          `  ${path}: ${share(result.first[k]!, result.firstError[k]!)} of the variance alone, ${share(result.total[k]!, result.totalError[k]!)} with the others\n`,
      );
      return head + shares.join('');
    })
    .join('');
}

const share = (value: number, error: number): string =>
  Number.isFinite(value) ? `${formatQuantity(value, '%')} ± ${formatQuantity(error, '%')}` : 'none';
