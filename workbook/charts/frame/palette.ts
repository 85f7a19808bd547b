import { series } from '../../theme/tokens';

/** How one line of a family is told apart: by colour and by dash together. */
export interface LineStyle {
  readonly line: string;
  readonly text: string;
  readonly dash: string;
}

/** Style of the n-th line; a custom property of the sheet's theme may change its colours. */
export function lineStyle(n: number): LineStyle {
  const { name, line, text, dash } = series[n % series.length]!;
  return { line: `var(--series-${name}, ${line})`, text: `var(--series-${name}-text, ${text})`, dash };
}
