import { formatQuantity, fromSI, type NameInfo } from '../../engine/index';

export interface ShowOptions {
  /** Without unit or suffix, where those stand elsewhere. */
  readonly bare?: boolean;
}

/** What a value is shown by; options of what is one of several. */
type Shown = Pick<NameInfo, 'unit' | 'suffix' | 'ways' | 'options'>;

/** A value as people read it: the picked option, or the number with its unit. No answer is a dash. */
export function showValue(info: Shown, si: number, options: ShowOptions = {}): string {
  if (info.options) return info.options[si]?.replaceAll('_', ' ') ?? '–';
  const { unit, suffix, ways } = info;
  return options.bare ? numberIn(formatQuantity(si, unit, { suffix })) : formatQuantity(si, unit, { suffix, ways });
}

/** How far a value has moved from the baseline, in its own unit and with as many decimals as the value shows. */
export function showChange(info: NameInfo, now: number, baseline: number): string {
  if (info.options || Number.isNaN(now) || Number.isNaN(baseline)) return '';
  const decimals = showValue(info, now, { bare: true }).split('.')[1]?.length ?? 0;
  const text = numberIn(formatQuantity(now - baseline, info.unit, { difference: true, sign: true, decimals }));
  return /[1-9]/.test(text) ? text : '0';
}

/** SI value in a unit of the unit table, NaN where there is no value. */
export function inUnit(si: number, unit: string): number {
  // Conversion leaves digits that nobody typed (-149.99999999999997); a slide needs what was typed.
  return Number(fromSI(si, unit).toPrecision(12));
}

/** The number without the unit behind it. */
const numberIn = (text: string): string => /^[+−]?[\d.\u202f]+(?:×10[⁻⁰¹²³⁴-⁹]+)?/.exec(text)?.[0] ?? text;
