import { type Race, type RaceAnswer, raceOf } from './stints';

/** Two needle settings that were both flown: the fastest, and one for range. */
export interface Needle {
  /** How much longer a lap takes at the setting for range, as a share of the lap at the fastest. */
  readonly slower: number;
  /** How much less fuel a lap takes at the setting for range, as a share of that at the fastest. */
  readonly saves: number;
}

/**
 * t = t_f (1 + Δt (1 − s)²),  v = v_f (1 − Δv (1 − s)): lap time and fuel a lap at the needle s, from 0 (for range) to 1 (fastest).
 * Derivation: the fastest needle is a maximum of power, so time grows with the square of the distance from it; flow goes with the opening.
 * Validity: between the two settings that were flown.
 */
export function atNeedle(fastest: Race, { slower, saves }: Needle, needle: number): Race {
  const back = 1 - needle;
  return {
    ...fastest,
    lapTime: fastest.lapTime * (1 + slower * back * back),
    fuelPerLap: fastest.fuelPerLap * (1 - saves * back),
  };
}

export interface BestNeedle {
  readonly needle: number;
  readonly answer: RaceAnswer;
}

/** Settings that are tried; the needle is found to a 200th of its way. */
export const NEEDLE_SETTINGS = 201;

/** The needle of the shortest race, and that race; the faster needle of two that take the same. Search over settings, since stops are whole. */
export function bestNeedle(fastest: Race, needle: Needle): BestNeedle {
  let best: BestNeedle = { needle: 1, answer: raceOf(fastest) };
  for (let k = NEEDLE_SETTINGS - 2; k >= 0; k--) {
    const setting = k / (NEEDLE_SETTINGS - 1);
    const answer = raceOf(atNeedle(fastest, needle, setting));
    if (answer.status === 'settled' && !(answer.time >= best.answer.time)) best = { needle: setting, answer };
  }
  return best;
}
