import { type Between, readCsvLines } from '../../../engine/index';

/** What stands between fields, and within a number between whole and decimals; undefined: not chosen. */
export interface Separators {
  readonly between: Between | undefined;
  readonly decimal: Decimal | undefined;
}

export type Decimal = '.' | ',';

export const BETWEEN_WORDS: readonly (readonly [Between, string])[] = [
  [',', 'comma'],
  [';', 'semicolon'],
  ['\t', 'tab'],
];

export const DECIMAL_WORDS: readonly (readonly [Decimal, string])[] = [
  ['.', 'point: 12.5'],
  [',', 'comma: 12,5'],
];

type Records = readonly { readonly line: number; readonly fields: readonly string[] }[];

const recordsBy = (text: string, between: Between): Records => {
  try {
    return readCsvLines(text, between);
  } catch {
    return [];
  }
};

/** Columns that the first line has with this between its fields. */
export const columnsBy = (text: string, between: Between): number => recordsBy(text, between)[0]?.fields.length ?? 0;

/**
 * What a text shows of its separators, to be seen and changed by a person: what parts every line into as many fields, and what stands
 * in its numbers. Undefined where two would do, or a number could be meant in two ways.
 */
export function seenIn(text: string): Separators {
  const parting = BETWEEN_WORDS.map(([sign]) => ({ sign, records: recordsBy(text, sign) })).filter(
    ({ records }) => (records[0]?.fields.length ?? 0) > 1,
  );
  const even = parting.filter(({ records }) =>
    records.every(({ fields }) => fields.length === records[0]!.fields.length),
  );
  const found = parting.length === 1 ? parting[0] : even.length === 1 ? even[0] : undefined;
  return { between: found?.sign, decimal: found && decimalIn(found.records.slice(1).flatMap(({ fields }) => fields)) };
}

/** Three digits behind the sign may be thousands: they tell nothing. */
function decimalIn(fields: readonly string[]): Decimal | undefined {
  const signs = new Set<string>();
  let unsure = false;
  for (const field of fields) {
    const [, sign, digits] = /^\s*[+\-−]?(?:\d+:)*\d*([.,])(\d+)(?![.,\d])/.exec(field) ?? [];
    if (sign === undefined) continue;
    if (digits!.length === 3) unsure = true;
    else signs.add(sign);
  }
  if (signs.size > 1 || (signs.size === 0 && unsure)) return undefined;
  return signs.has(',') ? ',' : '.';
}

/** A number's text with a point for its decimals, or what is wrong with it. */
export function withPoint(text: string, decimal: Decimal): { readonly text: string } | { readonly wrong: string } {
  const other = decimal === '.' ? ',' : '.';
  if (new RegExp(`\\d\\${other}\\d`).test(text)) {
    const [has, is] = decimal === '.' ? ['comma', 'point'] : ['point', 'comma'];
    return { wrong: `“${text}” has a ${has} between its digits, where decimals have a ${is}` };
  }
  return {
    text: decimal === '.' ? text : text.replace(/(\d*),(\d)/g, (_, whole, digit) => `${whole || '0'}.${digit}`),
  };
}
