import { checkFormula, constantOf, readText } from '../../formula/index';
import { isPartNumber } from '../../sheet/cells/index';
import { SPREAD_KINDS } from '../../sheet/document';
import type { Live } from '../../sheet/live';
import { cellsOf } from '../../sheet/sheets';
import { apartUnit } from '../../sheet/texts';
import type { NameInfo, SpreadFactor, SpreadTold } from '../../terms/index';
import { bound, formatQuantity } from '../../units/index';
import { meant } from '../command/values';
import type { SpreadInput } from './input';
import { inputFor } from './inputs';

type Names = ReadonlyMap<string, NameInfo>;

/** Reads "normal 2 g" for a name, or says what is wrong. The middle is what is typed there now. */
export function readSpread(live: Live, names: Names, path: string, text: string): SpreadInput | string {
  const info = names.get(path);
  const tables = cellsOf(live.compiled.document).filter((cell) => cell.kind === 'parts');
  if (!(info?.settable || isPartNumber(path, tables)) || info?.options || !info) {
    const settable = [...names.values()].filter((name) => name.settable && !name.options).map((name) => name.path);
    return `Nothing is called ${path} that a number can be typed into.${meant(path, settable)}`;
  }
  const unit = apartUnit(info.unit);
  const [, word, amountText] = /^\s*(\S+)\s+(.+)$/.exec(text) ?? [];
  const kind = SPREAD_KINDS.find((each) => each === word);
  if (!kind || amountText === undefined) {
    return `${path} is to differ by “${text}”. Write a kind and an amount, such as “normal 2 ${unit}”; the kinds are ${SPREAD_KINDS.join(', ')}.`;
  }
  const amount = amountOf(live, info, unit, amountText);
  if (amount === undefined || !(amount > 0)) {
    return `${path} is to differ by “${amountText}”, which is no amount greater than 0. Write a number with its unit, such as “${kind} 2 ${unit}”.`;
  }
  return inputFor(path, kind, amount, amount, live);
}

/** SI. On a scale with a zero of its own how far apart two values are is counted in another unit. */
function amountOf({ compiled }: Live, { path, unit, dimension }: NameInfo, apart: string, text: string) {
  if (apart !== unit && /°[CF]/.test(text)) return undefined;
  const typed = apart === unit ? compiled.read(path, text) : undefined;
  if (typed) return typed.is === 'constant' ? typed.value : undefined;
  const parsed = readText(text, apart);
  if (!parsed.ok) return undefined;
  const checked = checkFormula(
    parsed.expression,
    () => undefined,
    () => [],
    { kind: 'quantity', dimension },
  );
  return checked.ok ? constantOf(checked.expression) : undefined;
}

/** What a factor is called: what differs, and of a part all that goes together. */
function factorName({ path, what, paths }: SpreadFactor): string {
  if (what === 'place') return `place of ${path.slice(0, path.lastIndexOf('.'))}`;
  if (what === 'stuff') return `weight of what is cut from ${path}`;
  return paths ? paths.join(' and ') : path;
}

/** What the spread makes of each result, in its unit, and the shares of its variance; then why designs have no answer. */
export function spreadTable({ results, factors, causes, samples }: SpreadTold, names: Names): string {
  const told = results.map((result) => {
    const { unit, suffix, ways } = names.get(result.path)!;
    const value = (si: number): string => formatQuantity(si, unit, { suffix, ways });
    const apart = formatQuantity(result.deviation, unit, { suffix, difference: true });
    const missing = result.missing > 0 ? `; ${result.missing} of ${samples} designs have no answer` : '';
    const head = `${result.path}: mean ${value(result.mean)}, standard deviation ${apart}; ${bound('5', '%')} below ${value(result.low)}, half below ${value(result.middle)}, ${bound('95', '%')} below ${value(result.high)}${missing}\n`;
    const shares = factors.map(
      (factor, k) =>
        `  ${factorName(factor)}: ${share(result.first[k]!, result.firstError[k]!)} of the variance alone, ${share(result.total[k]!, result.totalError[k]!)} with the others\n`,
    );
    return head + shares.join('');
  });
  return [...told, ...causes.map(({ reason, count }) => `No answer, ${count} of ${samples}: ${reason}\n`)].join('');
}

const share = (value: number, error: number): string =>
  Number.isFinite(value) ? `${formatQuantity(value, '%')} ± ${formatQuantity(error, '%')}` : 'none';
