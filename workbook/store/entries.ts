import { keptText, literalIn, type NameInfo, printFormula, readText } from '../../engine/index';

/*
 * What an entry shows while nobody types in it, and what is kept of what is typed: one number keeps the unit in which it was
 * typed, and a bare one takes the unit that its entry shows.
 */

/** A name stands first, but "a 25" is an engine's size; or one of two parts stands anywhere. */
const BY_NAME = /^\s*(?!an?\s)[\p{L}_(]|[\p{L}_]{3,}\.[\p{L}_]/iu;

/** One number as it was typed, with its unit; undefined for a formula, a blank and what can't be read. */
export function typedNumber(info: NameInfo, text: string): string | undefined {
  if (info.options || info.suffix !== '' || BY_NAME.test(text)) return undefined;
  const read = readText(text, info.bare ?? info.unit);
  return read.ok && literalIn(read.expression) ? printFormula(read.expression) : undefined;
}

/** The unit that the entry with this text shows. */
export function unitShown(info: NameInfo, text: string): string {
  const bare = info.bare ?? info.unit;
  const read = text.trim() === '' ? undefined : readText(text, bare);
  const literal = read?.ok ? literalIn(read.expression) : undefined;
  return literal?.unit ?? info.unit;
}

/** What to keep of a text typed over another. */
export const textToKeep = (info: NameInfo | undefined, before: string, typed: string): string =>
  info === undefined || info.options ? typed : keptText(typed, unitShown(info, before), info.bare ?? info.unit);
