/** "0:26.1", to tenths while it runs and to hundredths when it is done. */
export function clockWords(seconds: number, decimals = 1): string {
  const unit = 10 ** decimals;
  const whole = Math.round(seconds * unit);
  const minutes = Math.floor(whole / (60 * unit));
  const rest = ((whole - minutes * 60 * unit) / unit).toFixed(decimals);
  return `${minutes}:${rest.padStart(decimals === 0 ? 2 : decimals + 3, '0')}`;
}

/** What the timer says aloud of its laps. */
export function lapsWords(splits: readonly number[]): string {
  const last = splits.at(-1);
  if (last === undefined) return 'No lap yet.';
  const laps = splits.length === 1 ? '1 lap' : `${splits.length} laps`;
  return `${laps}, the last ${last.toFixed(2)}\u00a0s, mean ${mean(splits).toFixed(2)}\u00a0s.`;
}

const mean = (values: readonly number[]): number => values.reduce((sum, each) => sum + each, 0) / values.length;
