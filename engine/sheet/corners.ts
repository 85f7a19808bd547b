import { MOST_CORNERS, type OutlineSpec } from '../blocks/outline';
import { keptText, readEntry } from '../formula/index';
import { formatQuantity, shownUnit, type UnitSet, writeQuantity } from '../units/index';

/** What an outline asks of its corners: its declaration, or the same as it is told to the page. */
export type CornersAsked = Pick<OutlineSpec, 'corner' | 'unit' | 'tradeUnit' | 'least'>;

export type CornersRead =
  | { readonly ok: true; readonly corners: readonly number[] }
  | { readonly ok: false; readonly corner: number; readonly message: string };

/** One corner a line, its two texts with a semicolon between them; blank lines say nothing. */
export const cornerTexts = (text: string): string[][] =>
  text
    .split(/\r?\n/)
    .filter((line) => line.trim() !== '')
    .map((line) => line.split(/[;\t]/).map((each) => each.trim()));

export const cornersText = (corners: readonly (readonly string[])[]): string =>
  corners.map((corner) => corner.join('; ')).join('\n');

/** SI numbers of the corners, two of each, or what is wrong with the first that can't be read. */
export function readCorners(text: string, asked: CornersAsked, set: UnitSet): CornersRead {
  const lines = cornerTexts(text);
  const corners: number[] = [];
  const shown = shownUnit(asked.unit, set, asked.tradeUnit);
  for (const [k, line] of lines.entries()) {
    const at = `Corner ${k + 1}`;
    const refused = (message: string): CornersRead => ({ ok: false, corner: k, message });
    if (line.length !== 2) {
      return refused(
        `${at} is “${line.join('; ')}”. A corner is two lengths with a semicolon between them, such as “${example(shown)}”.`,
      );
    }
    for (const [axis, { title, range }] of asked.corner.entries()) {
      const read = readEntry(line[axis]!, asked.unit, set);
      if (!read.ok) return refused(`${at}, ${title}: ${read.fault.message}`);
      const [low, high] = range;
      if (!(read.si >= low && read.si <= high)) {
        return refused(
          `${at}, ${title}: ${formatQuantity(read.si, shown)} is not between ${formatQuantity(low, shown)} and ${formatQuantity(high, shown)}.`,
        );
      }
      corners.push(read.si);
    }
  }
  if (lines.length > MOST_CORNERS) {
    return {
      ok: false,
      corner: MOST_CORNERS,
      message: `There are ${lines.length} corners; an outline has ${MOST_CORNERS} at most. Leave some out.`,
    };
  }
  if (lines.length < asked.least) {
    return {
      ok: false,
      corner: lines.length,
      message: `There ${lines.length === 1 ? 'is 1 corner' : `are ${lines.length} corners`}; this outline has ${asked.least} at least. Add the others, or remove the outline.`,
    };
  }
  return { ok: true, corners };
}

const example = (unit: string): string => (unit === 'in' ? '4.5 in; 1.25 in' : '120 mm; 30 mm');

/** The text of a corner that lies there, to a tenth of a millimetre or a five-hundredth of an inch. */
export function cornerAt(place: readonly [number, number], asked: CornersAsked, set: UnitSet): string[] {
  const unit = shownUnit(asked.unit, set, asked.tradeUnit);
  const step = unit === 'in' ? 0.002 * 0.0254 : 0.0001;
  return place.map((metres) => writeQuantity(Math.round(metres / step) * step, unit));
}

/** What is kept of a length that was typed: a bare number takes the unit that its entry shows. */
export const cornerKept = (typed: string, asked: CornersAsked, set: UnitSet): string =>
  keptText(typed.trim(), shownUnit(asked.unit, set, asked.tradeUnit), '');
