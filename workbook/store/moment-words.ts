const DAY = 24 * 3_600_000;

const two = (n: number): string => String(n).padStart(2, '0');

/** A time as the clock on the wall says it, with its date (ISO 8601) where that isn't today. Milliseconds since 1970. */
export function momentWords(at: number, now: number): string {
  const then = new Date(at);
  const clock = `${two(then.getHours())}:${two(then.getMinutes())}`;
  const today = startOfDay(now);
  if (startOfDay(at) === today) return `${clock} today`;
  if (startOfDay(at) === startOfDay(today - DAY / 2)) return `${clock} yesterday`;
  return `${then.getFullYear()}-${two(then.getMonth() + 1)}-${two(then.getDate())}, ${clock}`;
}

const startOfDay = (at: number): number => new Date(at).setHours(0, 0, 0, 0);
