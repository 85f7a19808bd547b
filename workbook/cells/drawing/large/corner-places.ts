import { cornerAt, type OutlineDescription, readCorners, type UnitSet } from '../../../../engine/index';
import type { Place } from '../../../drawing/index';

/** The two lengths of a corner, SI, as the outline has them. */
export type CornerPlace = readonly [number, number];

/** An outline that is drawn by hand: the texts of its corners, so that what isn't moved stays as it was typed. */
export type CornerTexts = readonly (readonly string[])[];

const sign = ({ mirrored }: Pick<OutlineDescription, 'mirrored'>): number => (mirrored ? -1 : 1);

/** Where a press on the drawing is, as a corner; undefined in the other view. A panel has none beyond the centreline. */
export function cornerPlace(outline: OutlineDescription, place: Place): CornerPlace | undefined {
  const second = 'y' in place ? place.y : place.z;
  if ('y' in place !== (outline.view === 'plan')) return undefined;
  const [first, other] = outline.corner.map(({ range: [low, high] }, k) =>
    Math.min(Math.max(k === 0 ? place.x : sign(outline) * second, low), high),
  );
  return [first!, other!];
}

/** A corner as the drawing has it: x, and y or z. */
export const onView = (outline: Pick<OutlineDescription, 'mirrored'>, [first, second]: CornerPlace): CornerPlace => [
  first,
  sign(outline) * second,
];

/** The places of corners; none of texts that can't be read. */
export function placesOf(texts: CornerTexts, outline: OutlineDescription, set: UnitSet): CornerPlace[] {
  const read = readCorners(texts.map((corner) => corner.join('; ')).join('\n'), { ...outline, least: 0 }, set);
  const numbers = read.ok ? read.corners : [];
  return Array.from({ length: numbers.length / 2 }, (_, k) => [numbers[2 * k]!, numbers[2 * k + 1]!] as const);
}

/** With one corner at another place. */
export const withMoved = (
  texts: CornerTexts,
  k: number,
  place: CornerPlace,
  outline: OutlineDescription,
  set: UnitSet,
): CornerTexts => texts.with(k, cornerAt(place, outline, set));

/** With one more behind the last, and which it is. */
export const withAdded = (
  texts: CornerTexts,
  place: CornerPlace,
  outline: OutlineDescription,
  set: UnitSet,
): CornerTexts => [...texts, cornerAt(place, outline, set)];

/** With one more on the side that is nearest to it. */
export function withInserted(
  texts: CornerTexts,
  place: CornerPlace,
  outline: OutlineDescription,
  set: UnitSet,
): { readonly texts: CornerTexts; readonly at: number } {
  const places = placesOf(texts, outline, set);
  const sides = outline.closed ? places.length : places.length - 1;
  let [at, least] = [places.length, Number.POSITIVE_INFINITY];
  for (let k = 0; k < sides; k++) {
    const far = distance(place, places[k]!, places[(k + 1) % places.length]!);
    if (far < least) [at, least] = [k + 1, far];
  }
  return { texts: texts.toSpliced(at, 0, cornerAt(place, outline, set)), at };
}

/** How far a point lies from a side. */
function distance([x, y]: CornerPlace, [x1, y1]: CornerPlace, [x2, y2]: CornerPlace): number {
  const [dx, dy] = [x2 - x1, y2 - y1];
  const long = dx * dx + dy * dy;
  const along = long === 0 ? 0 : Math.min(1, Math.max(0, ((x - x1) * dx + (y - y1) * dy) / long));
  return Math.hypot(x - x1 - along * dx, y - y1 - along * dy);
}
