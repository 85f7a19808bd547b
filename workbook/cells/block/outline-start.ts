import {
  cornerAt,
  cornerKept,
  cornerTexts,
  type OutlineDescription,
  type Shape,
  type UnitSet,
} from '../../../engine/index';

/** What is drawn of the thing that an outline goes round. */
const DRAWN: Readonly<Record<OutlineDescription['view'], string>> = { side: 'body', plan: 'wing' };

/**
 * The corners that stand on the drawing now, SI, as the outline has them: what a person begins with, so that nothing is another
 * number before one of them is moved. A panel leaves out what lies on the centreline.
 */
function standingCorners(
  { view, mirrored, closed }: Pick<OutlineDescription, 'view' | 'mirrored' | 'closed'>,
  shapes: readonly Shape[],
): (readonly [number, number])[] {
  const shape = shapes.find((each) => each.view === view && each.part === DRAWN[view] && each.closed);
  const corners: [number, number][] = [];
  const points = shape?.points ?? [];
  for (let k = 0; k + 1 < points.length; k += 2) corners.push([points[k]!, points[k + 1]!]);
  if (closed) return corners;
  const way = mirrored ? -1 : 1;
  const panel = corners.filter(([, y]) => way * y > 0).map(([x, y]) => [x, way * y] as const);
  // The drawing goes round the wing: one of its panels from the leading edge to the trailing edge, the other back.
  return mirrored ? panel.reverse() : panel;
}

/** The same as texts. */
export const cornerTextsOf = (outline: OutlineDescription, shapes: readonly Shape[], set: UnitSet): Corners =>
  standingCorners(outline, shapes).map((corner) => cornerAt(corner, outline, set));

type Corners = readonly (readonly string[])[];

/** The corners with those of a text in the place of as many from a row on; undefined for a text that is one length only. */
export function cornersPasted(
  corners: Corners,
  row: number,
  text: string,
  outline: OutlineDescription,
  set: UnitSet,
): Corners | undefined {
  if (!/[\n\t;]/.test(text.trim())) return undefined;
  const lines = cornerTexts(text).map((corner) => corner.map((typed) => cornerKept(typed, outline, set)));
  return corners.toSpliced(row, lines.length, ...lines);
}
