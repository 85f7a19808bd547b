import type { Spectra } from './spectra';

/** How loud the lines of a comb are along a pitch that was followed, ln of power over what lies between. */
export interface Teeth {
  /** At once, twice, three times … the pitch. */
  readonly whole: readonly number[];
  /** Halfway before each of these. */
  readonly half: readonly number[];
}

/** Means over the pieces from … to − 1. What lies between is read a quarter and three quarters of the way. */
export function teethOf(spectra: Spectra, pitch: Float64Array, pieces: readonly number[], harmonics: number): Teeth {
  const at = (order: number): number => {
    let sum = 0;
    for (const k of pieces) {
      const place = (order * Math.exp(pitch[k]!)) / spectra.line;
      const low = Math.floor(place);
      const row = k * spectra.lines + low;
      sum += spectra.levels[row]! + (place - low) * (spectra.levels[row + 1]! - spectra.levels[row]!);
    }
    return sum / pieces.length;
  };
  const above = (order: number): number => at(order) - (at(order - 0.25) + at(order + 0.25)) / 2;
  const orders = Array.from({ length: harmonics }, (_, h) => h + 1);
  return { whole: orders.map(above), half: orders.map((h) => above(h - 0.5)) };
}

/** A line stands out that is so much above what lies between. */
const PRESENT = 0.25;
/** Lines that are this much weaker than the others, ln of the power, are something beside them. */
const WEAKER = 1.6;
/** Lines halfway that are nearly as loud as the others. */
const NEARLY = 1.2;

/** Whether a pitch is the one that the tones are multiples of; or one of which only every second or third line is loud, or that has as loud ones halfway. */
export function standingOf({ whole, half }: Teeth): 'right' | 'higher' | 'lower' | 'none' {
  if (whole.filter((line) => line > PRESENT).length < 2) return 'none';
  for (const by of [2, 3]) {
    const others = whole.filter((_, h) => (h + 1) % by !== 0);
    const multiples = whole.filter((_, h) => (h + 1) % by === 0);
    if (loudest(others) < Math.max(PRESENT, loudest(multiples) - WEAKER)) return 'higher';
  }
  return loudest(half) > loudest(whole) - NEARLY ? 'lower' : 'right';
}

const loudest = (lines: readonly number[]): number => Math.max(...lines.slice(0, 5));
