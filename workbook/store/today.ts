/** The day by the clock of this machine, year first. */
export function today(now = Date.now()): string {
  const there = new Date(now);
  return new Date(now - there.getTimezoneOffset() * 60_000).toISOString().slice(0, 10);
}
