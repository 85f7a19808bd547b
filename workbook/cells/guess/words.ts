import {
  bound,
  formatQuantity,
  fromSI,
  type GuessCell,
  guessOptionPath,
  listed,
  type NameInfo,
  namesOf,
  readEntry,
  readText,
  type UnitSet,
} from '../../../engine/index';
import { showValue } from '../../store/show';

/** What a guess says, SI, or what is wrong with it. */
export type GuessRead = { readonly ok: true; readonly si: number } | { readonly ok: false; readonly message: string };

type Shown = Pick<NameInfo, 'unit' | 'suffix' | 'ways' | 'options'>;

/** Reads a number as fliers write it; one without a unit is in that of the answer. */
export function readGuess(text: string, { unit }: Pick<NameInfo, 'unit'>, set: UnitSet): GuessRead {
  if (text.trim() === '') return { ok: false, message: 'Type what you think it is. A wrong guess is a good one too.' };
  const read = readEntry(text, unit, set);
  if (read.ok) return { ok: true, si: read.si };
  const formula = readText(text, unit, set);
  const name = formula.ok ? namesOf(formula.expression)[0]?.name : undefined;
  return {
    ok: false,
    message:
      name === undefined
        ? read.fault.message
        : `“${name}” is no number. Type one, such as ${bound('12', unit).trim()}.`,
  };
}

/** A guess as the answer is said: "12 N". Ways of a result such as "out" and "in" are left out: it was typed without. */
export const guessText = ({ unit, suffix }: Shown, si: number): string => formatQuantity(si, unit, { suffix });

/** Place, from 0, of the first answer within whose ends the computed number lies; −1 where none is. */
export function rightOption(cell: GuessCell, value: (path: string) => number): number {
  const answer = value(cell.name);
  if (Number.isNaN(answer)) return -1;
  return cell.options.findIndex((_, k) => {
    const path = guessOptionPath(cell, k);
    return !(answer < value(`${path}.low`) || answer > value(`${path}.high`));
  });
}

/** "You guessed 10 N. It is 13.2 N." */
export function numberSentence(cell: GuessCell, info: NameInfo, answer: number, set: UnitSet): string {
  const is = `It is ${showValue(info, answer)}.`;
  const read = cell.guesses.flatMap(({ by, text }) => {
    const guess = readGuess(text, info, set);
    return guess.ok ? [{ by, si: guess.si }] : [];
  });
  if (read.length === 0) return is;
  if (read.length === 1) {
    const [{ by, si }] = read as [{ by: string; si: number }];
    return `${by === '' ? 'You' : by} guessed ${guessText(info, si)}. ${is}`;
  }
  const off = ({ si }: { readonly si: number }): number => Math.abs(si - answer);
  const least = Math.min(...read.map(off));
  const nearest = read.filter((each) => off(each) <= least * (1 + 1e-9));
  return `${is} Nearest: ${listed(nearest.map(({ by, si }) => `${by} with ${guessText(info, si)}`))}.`;
}

/** How a line goes from its first to its last value, in words. */
function course(info: Shown, from: number, to: number, whole: number): string {
  const [a, b] = [showValue(info, from), showValue(info, to)];
  if (Math.abs(to - from) <= LEVEL * whole) return `stays near ${a}`;
  return `${to > from ? 'rises' : 'falls'} from ${a} to ${b}`;
}
/** A line that changes by less than this share of its greatest value is called level. */
const LEVEL = 0.05;

/** What the answer does along the number across, and what the drawn lines do. */
export function lineSentence(cell: GuessCell, info: NameInfo, ys: readonly number[]): string {
  const answered = ys.filter(Number.isFinite);
  if (answered.length === 0) return 'No design along it has an answer.';
  const whole = Math.max(...answered.map(Math.abs));
  const is = `The answer ${course(info, answered[0]!, answered.at(-1)!, whole)}.`;
  const drawn = cell.guesses.flatMap(({ by, line }) => {
    if (!line) return [];
    return [
      `${by === '' ? 'Your line' : by} ${course(info, line[0]!, line.at(-1)!, Math.max(...line.map(Math.abs)))}.`,
    ];
  });
  return [is, ...drawn].join(' ');
}

/** Where a number stands on a line from `low` to `high` that holds all of them, 0 to 1. */
export function stripOf(numbers: readonly number[]): {
  readonly at: readonly number[];
  readonly low: number;
  readonly high: number;
} {
  const [least, most] = [Math.min(...numbers), Math.max(...numbers)];
  const low = least >= 0 && least < most / 2 ? 0 : least - 0.05 * (most - least || Math.abs(most) || 1);
  const high = most + 0.05 * (most - low || Math.abs(most) || 1);
  return { low, high, at: numbers.map((each) => (each - low) / (high - low)) };
}

/** Number of an answer in the unit in which it is shown. */
export const inShown = ({ unit }: Pick<NameInfo, 'unit'>, si: number): number => fromSI(si, unit);
