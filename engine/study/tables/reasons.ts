/** A number by itself: with its sign, its decimals and a power of ten as the sheet writes them. */
const NUMBER = /(?<![\w.…])[−+-]?\d+(?:\.\d+)?(?:×10[⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+|e[−+-]?\d+)?(?![\w.]*\w)/g;

/** A reason with its numbers left out, so that designs which lack an answer for the same reason can be put together. */
export const withoutNumbers = (sentence: string): string => sentence.replace(NUMBER, '…');
