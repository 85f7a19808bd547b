import { beyond, type Place, type Polyhedron } from './polyhedron';

/**
 * What a cut takes off each axis at a corner of the box around a tank, m; the sign says which corner: rear, outboard, top positive. NaN: the
 * cut runs along that axis, and takes an edge off; with two NaN it takes an end off.
 */
export type CornerCut = Place;

/**
 * Σ (h_k − s_k x_k)/|c_k| ≥ 1 is kept, s_k sign and |c_k| size of what is taken off along axis k, h_k half the size of the box: a body less
 * the corner that a plane takes off. Any convex body is a box so cut often enough. Nothing typed: the body itself. Geometry.
 */
export function cutCorner(body: Polyhedron, half: Place, cut: CornerCut): Polyhedron {
  const inward = cut.map((off) => (Number.isNaN(off) || off === 0 ? 0 : -1 / off));
  const [x, y, z] = inward as [number, number, number];
  if (x === 0 && y === 0 && z === 0) return body;
  const toCorner = inward.reduce((sum, part, k) => sum + Math.abs(part) * half[k]!, 0);
  return beyond(body, [x, y, z], 1 - toCorner);
}
