import type { CornerCut } from '../../physics/index';
import type { Columns, Field } from '../block';
import { MILLIMETRES } from '../measures';

const AXES = [
  ['x', 'lengthwise', 'rear end positive, front end negative'],
  ['y', 'across', 'outboard side positive, inboard side negative'],
  ['z', 'upright', 'top positive, bottom negative'],
] as const;

const off = (n: number, axis: number): Field => ({
  ...MILLIMETRES,
  symbol: `c_${n}${AXES[axis]![0]}`,
  title: `Cut ${n}, ${AXES[axis]![1]}`,
  doc: `How far the cut reaches from its corner ${AXES[axis]![1]}: ${AXES[axis]![2]}. Blank: the cut runs along ${AXES[axis]![0]} and takes off a whole edge.`,
  default: Number.NaN,
  range: [-0.5, 0.5],
  basis: 'No cut this way.',
  advanced: true,
});

/** Corners and edges that the tank lacks: with enough of them any convex tank is a box or a wedge. */
export const tankCuts = {
  cut1_x: off(1, 0),
  cut1_y: off(1, 1),
  cut1_z: off(1, 2),
  cut2_x: off(2, 0),
  cut2_y: off(2, 1),
  cut2_z: off(2, 2),
  cut3_x: off(3, 0),
  cut3_y: off(3, 1),
  cut3_z: off(3, 2),
  cut4_x: off(4, 0),
  cut4_y: off(4, 1),
  cut4_z: off(4, 2),
} as const;

export function readCuts(m: Float64Array, f: Columns<typeof tankCuts>, i: number): readonly CornerCut[] {
  const at = (column: number): number => m[column + i]!;
  return [
    [at(f.cut1_x), at(f.cut1_y), at(f.cut1_z)],
    [at(f.cut2_x), at(f.cut2_y), at(f.cut2_z)],
    [at(f.cut3_x), at(f.cut3_y), at(f.cut3_z)],
    [at(f.cut4_x), at(f.cut4_y), at(f.cut4_z)],
  ];
}
