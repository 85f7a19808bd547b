import {
  type FitAnswer,
  type FittedFactor,
  formatNumber,
  formatQuantity,
  fromSI,
  type NameInfo,
  toSI,
  writeQuantity,
} from '../../../engine/index';

type Shown = Pick<NameInfo, 'unit' | 'suffix'>;

/** How it ended, in one line. */
export function statusWords(answer: FitAnswer | undefined): string {
  if (!answer) return 'Not fitted yet.';
  if (answer.state === 'fault') return 'Not fitted.';
  const flights = new Set(answer.numbers.map(({ row }) => row)).size;
  const numbers = answer.numbers.length;
  const steps = `${answer.iterations} ${answer.iterations === 1 ? 'step' : 'steps'}`;
  return `Fitted in ${steps} to ${numbers} measured ${numbers === 1 ? 'number' : 'numbers'} of ${flights} ${flights === 1 ? 'flight' : 'flights'}.`;
}

/** How near the model comes to the log, before and after. */
export function nearWords({ scatter, scatterBefore, freedom }: FitAnswer): string {
  if (freedom < 1) return '';
  return `The readings lie ${formatNumber(scatter)} of their measuring errors off (root mean square); with the design as it stands ${formatNumber(scatterBefore)}.`;
}

/** What the standard errors rest on. */
export const restWords = ({ errors }: FitAnswer): string =>
  errors === 'scatter'
    ? 'Standard errors by the scatter of the readings about the fit.'
    : 'Standard errors by the measuring errors as the log states them.';

/** "1.182 ± 0.014": the value to the second digit of its error; without one it says why. */
export function foundWords(factor: FittedFactor, { unit, suffix }: Shown): string {
  if (factor.end !== undefined) return `${formatQuantity(factor.value, unit, { suffix, significant: 4 })}, at its end`;
  if (!factor.determined) return 'not determined';
  const error = fromSI(factor.error, unit) - fromSI(0, unit);
  const decimals =
    error > 0 && Number.isFinite(error) ? Math.min(9, Math.max(0, 1 - Math.floor(Math.log10(error)))) : 4;
  const value = fromSI(factor.value, unit).toFixed(decimals).replace('-', '−');
  const behind = suffix || unit;
  return `${value} ± ${error.toFixed(decimals)}${behind === '' ? '' : ` ${behind}`}`;
}

/** More digits than any log settles, fewer than a page of them. */
const DIGITS = 6;

/** The value as a text to be typed. */
export function takenText(factor: FittedFactor, { unit }: Shown): string {
  return writeQuantity(toSI(Number(fromSI(factor.value, unit).toPrecision(DIGITS)), unit), unit);
}

/** Whether what was found is what is typed already, as far as it would be written. */
export const isTaken = (factor: FittedFactor): boolean =>
  Math.abs(factor.value - factor.before) <= 10 ** (1 - DIGITS) * Math.abs(factor.value);
