import { branchAt, type Linkage, type Pushrod, pushrodBetween, senseOf } from '../../physics/index';
import type { Columns } from '../block';
import type { leadoutResults } from '../leadouts/index';
import type { linesResults } from '../lines/results';
import type { tailResults } from '../tail/results';
import type { controlResults } from './results';

type Built = Pick<
  Columns<typeof controlResults>,
  | 'front_arm'
  | 'rear_arm'
  | 'hole_offset'
  | 'bellcrank_z'
  | 'pushrod_arm'
  | 'pushrod_direction'
  | 'pushrod_length'
  | 'horn_height'
  | 'horn_direction'
  | 'horn_y'
  | 'up_line_longer'
>;
interface Around {
  readonly leadouts: Columns<typeof leadoutResults>;
  readonly lines: Columns<typeof linesResults>;
  readonly tail: Columns<typeof tailResults>;
}

type Ends = Omit<Pushrod, 'length' | 'branch'>;

function endsOf(m: Float64Array, built: Built, { leadouts, tail }: Around, i: number): Ends {
  const at = (column: number): number => m[column + i]!;
  return {
    pivotX: at(leadouts.pivot_x),
    pivotY: at(leadouts.pivot_y),
    plane: at(built.bellcrank_z),
    arm: at(built.pushrod_arm),
    direction: at(built.pushrod_direction),
    hingeX: at(tail.hinge_x),
    hingeZ: at(tail.hinge_z),
    hornY: at(built.horn_y),
    horn: at(built.horn_height),
    hornDirection: at(built.horn_direction),
  };
}

/** Length of a pushrod that leaves the elevator neutral with the bellcrank square, m. */
export const measuredPushrod = (m: Float64Array, built: Built, around: Around, i: number): number =>
  pushrodBetween(endsOf(m, built, around, i), 0, 0);

/** The same with the bellcrank turned by t (up positive). */
export const pushrodForNeutral = (l: Linkage, turn: number): number => pushrodBetween(l.pushrod, l.sense * turn, 0);

/** The linkage of a sample, as the results of the control block tell it. */
export function readLinkage(m: Float64Array, built: Built, around: Around, i: number): Linkage {
  const at = (column: number): number => m[column + i]!;
  const { leadouts, lines } = around;
  const ends = endsOf(m, built, around, i);
  const pushrod: Pushrod = { ...ends, length: at(built.pushrod_length), branch: branchAt(ends, 0, 0) };
  const half = at(leadouts.spacing) / 2;
  return {
    bellcrank: {
      pivotX: ends.pivotX,
      pivotY: ends.pivotY,
      frontArm: at(built.front_arm),
      rearArm: at(built.rear_arm),
      offset: at(built.hole_offset),
      frontGuideX: at(leadouts.guide_x) - half,
      rearGuideX: at(leadouts.guide_x) + half,
      guideY: at(leadouts.guide_y),
    },
    pushrod,
    sense: senseOf(pushrod),
    spacing: at(lines.handle_spacing),
    upLineLonger: at(built.up_line_longer),
  };
}
