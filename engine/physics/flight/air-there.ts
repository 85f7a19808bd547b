/** Wind at the model, m/s: along its path (with it positive), along the chord outward, across the chord upward. */
export interface Air {
  along: number;
  out: number;
  up: number;
  /** None of the three. */
  still: boolean;
}

export const newAir = (): Air => ({ along: 0, out: 0, up: 0, still: true });

/** Calm air. */
export const CALM: Readonly<Air> = newAir();
