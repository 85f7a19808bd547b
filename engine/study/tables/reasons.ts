/** A number by itself: with its sign, its decimals and a power of ten as the sheet writes them. */
const NUMBER = /(?<![\w.…])[−+-]?\d+(?:\.\d+)?(?:×10[⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+|e[−+-]?\d+)?(?![\w.]*\w)/g;

/** A reason with its numbers left out, so that designs which lack an answer for the same reason can be put together. */
export const withoutNumbers = (sentence: string): string => sentence.replace(NUMBER, '…');

/** Sentences that differ in numbers alone, as one: "slack at 90 to 97.5°, in a wind of 11.9 to 13 m/s". */
export function withRanges(sentences: readonly string[]): string {
  const [first = ''] = sentences;
  const numbers = sentences.map((sentence) => sentence.match(NUMBER) ?? []);
  let place = -1;
  return first.replace(NUMBER, () => {
    place += 1;
    const sorted = numbers.map((each) => each[place]!).sort((a, b) => sizeOf(a) - sizeOf(b));
    const [low, high] = [sorted[0]!, sorted.at(-1)!];
    return low === high ? low : `${low} to ${high}`;
  });
}

const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';

const sizeOf = (digits: string): number =>
  Number(
    digits
      .replace('×10', 'e')
      .replaceAll(/[−⁻]/g, '-')
      .replaceAll(/[⁰¹²³⁴⁵⁶⁷⁸⁹]/g, (digit) => String(RAISED.indexOf(digit))),
  );
