import { type GearLeg, musicWireModuli, type Vector } from '../../physics/index';
import type { Columns } from '../block';
import type { bodyResults } from '../body/results';
import { typedOr } from '../measures';
import type { gearFields } from './fields';

const BENDS = [
  ['bend_1_x', 'bend_1_y', 'bend_1_z'],
  ['bend_2_x', 'bend_2_y', 'bend_2_z'],
  ['bend_3_x', 'bend_3_y', 'bend_3_z'],
] as const;

/** The outboard leg from where it is held to its axle, and the strap from which it starts. */
export interface PlacedLeg {
  readonly leg: GearLeg;
  readonly strap: Vector;
}

export function placeLeg(
  m: Float64Array,
  f: Columns<typeof gearFields>,
  body: Columns<typeof bodyResults>,
  i: number,
): PlacedLeg {
  const at = (column: number): number => m[column + i]!;
  const aft = at(f.axle_aft);
  const strap: Vector = [
    at(body.wheel_x) - aft,
    typedOr(at(f.strap_y), at(body.width) / 2),
    typedOr(at(f.strap_z), at(body.middle_height)),
  ];
  const points: Vector[] = [[0, 0, 0]];
  for (const [x, y, z] of BENDS) {
    const bend: Vector = [at(f[x]), at(f[y]), at(f[z])];
    if (bend.every((part) => !Number.isNaN(part))) points.push(bend);
  }
  points.push([aft, Math.max(at(body.wheel_track) / 2, strap[1]) - strap[1], at(body.wheel_z) - strap[2]]);
  const diameter = typedOr(at(f.wire_diameter), at(body.wire_diameter));
  const { young, shear } = musicWireModuli(diameter);
  return { leg: { points, diameter, young, shear, between: at(f.leg) === 0 ? 2 * strap[1] : 0 }, strap };
}
