/** In which order a day is written where its year comes last. */
export type DayOrder = 'day' | 'month';

const YEAR_FIRST = /^(\d{4})[-./](\d{1,2})[-./](\d{1,2})$/;
const YEAR_LAST = /^(\d{1,2})([-./])\s*(\d{1,2})\2\s*(\d{4}|\d{2})$/;

export const looksLikeDay = (text: string): boolean => YEAR_FIRST.test(text) || YEAR_LAST.test(text);

/** What the days of a text show of their order; undefined where every one could be meant in two ways. */
export function orderIn(texts: readonly string[]): DayOrder | undefined {
  const parts = texts.flatMap((text) => {
    const [, first, sign, second] = YEAR_LAST.exec(text.trim()) ?? [];
    return first === undefined ? [] : [{ first: Number(first), second: Number(second), sign }];
  });
  if (parts.length === 0 || parts.some(({ first }) => first > 12)) return 'day';
  if (parts.some(({ second }) => second > 12)) return 'month';
  // With points between it is written in one way alone.
  return parts.every(({ sign }) => sign === '.') ? 'day' : undefined;
}

/** "5.9.2026" → "2026-09-05"; undefined for what is no day. */
export function readDay(text: string, order: DayOrder): string | undefined {
  const yearFirst = YEAR_FIRST.exec(text);
  const yearLast = YEAR_LAST.exec(text);
  if (yearFirst) return dayOf(Number(yearFirst[1]), Number(yearFirst[2]), Number(yearFirst[3]));
  if (!yearLast) return undefined;
  const [first, second, year] = [Number(yearLast[1]), Number(yearLast[3]), Number(yearLast[4])];
  const [day, month] = order === 'day' ? [first, second] : [second, first];
  return dayOf(year < 100 ? 2000 + year : year, month, day);
}

function dayOf(year: number, month: number, day: number): string | undefined {
  const moment = new Date(Date.UTC(year, month - 1, day));
  if (moment.getUTCMonth() !== month - 1 || moment.getUTCDate() !== day) return undefined;
  return moment.toISOString().slice(0, 10);
}
