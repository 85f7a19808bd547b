import type { FlownAnswer } from '../../../engine/index';

/** How the measured numbers of one result lie to the predicted ones. `difference`: a difference in its unit, with its sign. */
export function measuredSentence(
  title: string,
  numbers: FlownAnswer['numbers'],
  difference: (si: number) => string,
): string {
  const mean = numbers.reduce((sum, { value, predicted }) => sum + value - predicted, 0) / numbers.length;
  const within = numbers.filter(({ value, predicted, error }) => Math.abs(value - predicted) <= error).length;
  const flights = numbers.length === 1 ? '1 flight' : `${numbers.length} flights`;
  return `${title}, ${flights}: measured less predicted ${difference(mean)} in the mean; ${within} within one measuring error.`;
}
