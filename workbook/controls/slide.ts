/** Where a value lies on a slide, 0 at the low end and 1 at the high end, kept inside. */
export function fractionOf(value: number, low: number, high: number): number {
  return Math.min(1, Math.max(0, (value - low) / (high - low)));
}

/** A thousandth of the range, rounded down to 1, 2 or 5 of a decade: fine enough to set, coarse enough to read. */
export function stepOf(low: number, high: number): number {
  const raw = (high - low) / 1000;
  if (!(raw > 0)) return 1;
  const decade = 10 ** Math.floor(Math.log10(raw) + 1e-9);
  const lead = raw / decade;
  return (lead >= 5 ? 5 : lead >= 2 ? 2 : 1) * decade;
}

/** Digits after the point that a step needs. */
export function decimalsOf(step: number): number {
  for (let digits = 0; digits < 9; digits++) {
    if (Math.abs(step * 10 ** digits - Math.round(step * 10 ** digits)) < 1e-6) return digits;
  }
  return 9;
}

/** What the slide types into the variable: a plain number with the variable's unit. */
export function slideText(value: number, step: number, unit: string): string {
  const fixed = value.toFixed(decimalsOf(step));
  const number = Number(fixed) === 0 ? fixed.replace('-', '') : fixed;
  return unit === '' ? number : `${number} ${unit}`;
}
