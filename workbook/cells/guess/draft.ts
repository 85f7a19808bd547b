import { GUESS_PLACES, type Guess } from '../../../engine/index';

/** What is being guessed and not taken yet. */
export interface Draft {
  readonly by: string;
  /** The number as typed, or the place of the chosen answer, from 1. */
  readonly text: string;
  /** Heights of the line, SI, once somebody has drawn. */
  readonly line: readonly number[] | undefined;
}
export const NO_DRAFT: Draft = { by: '', text: '', line: undefined };

/** Before anything is drawn the line lies level at the present value. */
export const levelLine = (now: number): readonly number[] =>
  Array.from({ length: GUESS_PLACES }, () => (Number.isFinite(now) ? now : 0));

/** Who guesses where no name is typed: the next number that nobody has. */
export function nextNumber(guesses: readonly Guess[]): string {
  let n = guesses.length + 1;
  while (guesses.some(({ by }) => by === String(n))) n++;
  return String(n);
}
