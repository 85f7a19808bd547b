import type { LogCell } from '../../../engine/index';

/** What a flight is called: "Flight 3", else its day, else its place. */
export function flightTitle({ rows }: LogCell, k: number): string {
  const { label = '', date = '' } = rows[k] ?? {};
  if (label === '') return date === '' ? `Row ${k + 1}` : date;
  return /^\d+$/.test(label) ? `Flight ${label}` : label;
}
