import { nonNegative, positive } from '../domain';

/**
 * A bellcrank with its leadouts, seen from above: m, x aft and y outboard of the datum. It turns by β about its pivot, positive
 * where the front hole goes inboard; at β = 0 its leadout holes lie fore and aft.
 */
export interface Bellcrank {
  readonly pivotX: number;
  readonly pivotY: number;
  /** From the pivot to the holes of the front and of the rear leadout, along the line through both. */
  readonly frontArm: number;
  readonly rearArm: number;
  /** How far that line lies inboard of the pivot. */
  readonly offset: number;
  /** Where each leadout passes its guide. */
  readonly frontGuideX: number;
  readonly rearGuideX: number;
  readonly guideY: number;
}

/** What a bellcrank does at a turn. */
export interface BellcrankState {
  frontX: number;
  frontY: number;
  rearX: number;
  rearY: number;
  /** Inside lengths of the leadouts, m: from the guide to the hole. */
  frontLength: number;
  rearLength: number;
  /** Lever arms of both pulls about the pivot, m: what a radian of turn pulls in of the front and lets out of the rear. */
  frontLever: number;
  rearLever: number;
}

export const newBellcrankState = (): BellcrankState => ({
  frontX: Number.NaN,
  frontY: Number.NaN,
  rearX: Number.NaN,
  rearY: Number.NaN,
  frontLength: Number.NaN,
  rearLength: Number.NaN,
  frontLever: Number.NaN,
  rearLever: Number.NaN,
});

/**
 * P = O + R(β) p,  d = |P − G|,  lever = |P' · (P − G)|/d: holes P of the leadouts, their inside lengths d to the guides G, and the lever
 * arms about the pivot O, which are the derivatives of d with β: front −d', rear +d'. Derivation: rotation about the pivot.
 */
export function turnBellcrank(b: Bellcrank, turn: number, out: BellcrankState): void {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const inboard = -b.offset;
  const frontU = -positive('front arm', b.frontArm) * cos - inboard * sin;
  const frontV = -b.frontArm * sin + inboard * cos;
  const rearU = positive('rear arm', b.rearArm) * cos - inboard * sin;
  const rearV = b.rearArm * sin + inboard * cos;
  const frontDX = b.pivotX + frontU - b.frontGuideX;
  const frontDY = b.pivotY + frontV - b.guideY;
  const rearDX = b.pivotX + rearU - b.rearGuideX;
  const rearDY = b.pivotY + rearV - b.guideY;
  out.frontX = b.pivotX + frontU;
  out.frontY = b.pivotY + frontV;
  out.rearX = b.pivotX + rearU;
  out.rearY = b.pivotY + rearV;
  out.frontLength = Math.sqrt(frontDX * frontDX + frontDY * frontDY);
  out.rearLength = Math.sqrt(rearDX * rearDX + rearDY * rearDY);
  out.frontLever = (frontV * frontDX - frontU * frontDY) / out.frontLength;
  out.rearLever = (rearU * rearDY - rearV * rearDX) / out.rearLength;
}

/**
 * s = b sin κ: how much further a handle pulls in the upper line than the lower (m), lines parallel and b apart at the handle (m), tilted
 * back by κ (rad). The overhang of the attachments in front of the grip moves both alike and drops out. Geometry.
 */
export const handleDifference = (spacing: number, angle: number): number => spacing * Math.sin(angle);

/** κ = arcsin(s/b): the inverse of `handleDifference`; NaN where no tilt gives it. */
export const handleAngleFor = (spacing: number, difference: number): number =>
  Math.asin(difference / positive('handle spacing', spacing));

/**
 * M = T e sin κ + ½ ΔT b cos κ: torque (N·m) with which the hand holds a handle tilted by κ (rad) against the pull T of both lines and
 * their difference ΔT (N), attached b apart and e in front of the grip (m). A long overhang turns the handle upright by itself.
 * Derivation: moments about the grip, lines parallel.
 */
export function handleTorque(
  spacing: number,
  overhang: number,
  angle: number,
  pull: number,
  difference: number,
): number {
  return (
    nonNegative('pull', pull) * overhang * Math.sin(angle) +
    0.5 * difference * positive('handle spacing', spacing) * Math.cos(angle)
  );
}
