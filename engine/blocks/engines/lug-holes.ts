import type { TemplatePoint } from '../template';

/** Holes in the lugs of an engine, m; NaN where it isn't known. */
export interface LugHoles {
  /** From middle to middle along the shaft and across it. */
  readonly along: number;
  readonly across: number;
  readonly diameter: number;
  /** Of the middle between them, aft of the middle of the engine. */
  readonly aft: number;
}

/** Middles of the four holes, aft of the middle of the engine and outboard of its shaft; none where something isn't known. */
export function holesOf({ along, across, diameter, aft }: LugHoles): TemplatePoint[] {
  if (![along, across, diameter, aft].every(Number.isFinite)) return [];
  return [-along / 2, along / 2].flatMap((x) => [-across / 2, across / 2].map((y): TemplatePoint => [aft + x, y]));
}

/**
 * Station (m) of an engine as far forward as it goes, with the middles of its holes where they are while it is at `station`: as much
 * wood as a hole is wide is left ahead of the front ones (common practice, no source). NaN without holes.
 */
export function foremostOf(
  middles: readonly TemplatePoint[],
  { diameter }: LugHoles,
  station: number,
  front: number,
): number {
  if (middles.length === 0) return Number.NaN;
  return station - (Math.min(...middles.map(([x]) => x)) - (front + 1.5 * diameter));
}
