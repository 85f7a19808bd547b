import type { BodyStation } from '../../physics/index';
import type { Shape } from '../block';

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly length: number;
  readonly width: number;
  readonly height: number;
}

/** A fuselage whose side is given by its corners. */
export function drawOutline(corners: readonly number[], width: number): Shape[] {
  const stations = corners.filter((_, k) => k % 2 === 0);
  return [
    { view: 'side', part: 'body', points: corners, closed: true },
    planOf(Math.min(...stations), Math.max(...stations), width),
  ];
}

const planOf = (nose: number, end: number, width: number): Shape => ({
  view: 'plan',
  part: 'body',
  points: [nose, width / 2, end, width / 2, end, -width / 2, nose, -width / 2],
  closed: true,
});

/** Side outline and plan of the fuselage. */
export function drawFuselage(stations: readonly BodyStation[], width: number, middle: number): Shape[] {
  const upper = stations.flatMap(({ x, depth }) => [x, middle + depth / 2]);
  const lower = [...stations].reverse().flatMap(({ x, depth }) => [x, middle - depth / 2]);
  return [
    { view: 'side', part: 'body', points: [...upper, ...lower], closed: true },
    planOf(stations[0]!.x, stations.at(-1)!.x, width),
  ];
}

/** A box in both views; nothing where it has no length. */
export function drawBox(part: string, b: Box): Shape[] {
  if (!(b.length > 0)) return [];
  const rectangle = (across: number, size: number): number[] => {
    const [x0, x1, a, c] = [b.x - b.length / 2, b.x + b.length / 2, across - size / 2, across + size / 2];
    return [x0, a, x1, a, x1, c, x0, c];
  };
  return [
    { view: 'plan', part, points: rectangle(b.y, b.width), closed: true },
    { view: 'side', part, points: rectangle(b.z, b.height), closed: true },
  ];
}

export interface Gear {
  readonly count: number;
  readonly x: number;
  readonly z: number;
  readonly diameter: number;
  readonly width: number;
  readonly track: number;
  /** Where the legs leave the fuselage. */
  readonly footZ: number;
}

/** Wheels in both views, and the legs that carry them. */
export function drawGear(g: Gear): Shape[] {
  if (!(g.count > 0 && g.diameter > 0)) return [];
  const sides = g.track > 0 ? [-1, 1] : [0];
  const shapes: Shape[] = [
    { view: 'side', part: 'wheel', points: [g.x, g.z], radius: g.diameter / 2 },
    { view: 'side', part: 'wire', points: [g.x, g.footZ, g.x, g.z] },
  ];
  for (const side of sides) {
    const y = (side * g.track) / 2;
    shapes.push(...drawBox('wheel', { ...g, y, length: g.diameter, height: 0 }).slice(0, 1));
    if (side !== 0) shapes.push({ view: 'plan', part: 'wire', points: [g.x, 0, g.x, y] });
  }
  return shapes;
}
