/** A text as a string of a style sheet. */
export const styleString = (text: string): string =>
  `"${text.replace(/["\\\p{Cc}]/gu, (sign) => `\\${sign.codePointAt(0)!.toString(16)} `)}"`;
