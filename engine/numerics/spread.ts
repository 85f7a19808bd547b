import { normalQuantile } from './normal';

/** How a number may differ from what is typed. */
export type Spread =
  | { readonly kind: 'normal'; readonly middle: number; readonly deviation: number }
  | { readonly kind: 'uniform'; readonly low: number; readonly high: number }
  | { readonly kind: 'triangular'; readonly low: number; readonly mode: number; readonly high: number };

/**
 * The value below which the share u (0 < u < 1) of a spread lies: normal μ + σ Φ⁻¹(u); uniform a + u (b − a); triangular a + √(u (b − a)(m − a)) below its
 * mode m, b − √((1 − u)(b − a)(b − m)) above. Definitions.
 */
export function quantileOf(spread: Spread, u: number): number {
  switch (spread.kind) {
    case 'normal':
      return spread.middle + spread.deviation * normalQuantile(u);
    case 'uniform':
      return spread.low + u * (spread.high - spread.low);
    case 'triangular': {
      const { low, mode, high } = spread;
      const width = high - low;
      if (!(width > 0)) return mode;
      if (u < (mode - low) / width) return low + Math.sqrt(u * width * (mode - low));
      return high - Math.sqrt((1 - u) * width * (high - mode));
    }
  }
}
