import type { Bellcrank, Linkage, Pushrod } from '../../../../engine/physics/index';
import { branchAt, pushrodBetween, senseOf } from '../../../../engine/physics/index';

/** A usual linkage of a model of 1 m span: m, rad. */
export const bellcrank: Bellcrank = {
  pivotX: 0.06,
  pivotY: -0.03,
  frontArm: 0.038,
  rearArm: 0.038,
  offset: 0,
  frontGuideX: 0.051,
  rearGuideX: 0.073,
  guideY: -0.5,
};

const ends = {
  pivotX: 0.06,
  pivotY: -0.03,
  plane: 0,
  arm: 0.019,
  direction: Math.PI / 2,
  hingeX: 0.5,
  hingeZ: 0.01,
  hornY: -0.011,
  horn: 0.025,
  hornDirection: -Math.PI / 2,
};

/** A pushrod made to measure: the elevator neutral with the bellcrank square. */
export function measured(changes: Partial<typeof ends> = {}): Pushrod {
  const all = { ...ends, ...changes };
  return { ...all, length: pushrodBetween(all, 0, 0), branch: branchAt(all, 0, 0) };
}

export function linkage(changes: Partial<Linkage> = {}, rod: Pushrod = measured()): Linkage {
  return { bellcrank, pushrod: rod, sense: senseOf(rod), spacing: 0.09, upLineLonger: 0, ...changes };
}

export const DEGREE = Math.PI / 180;
