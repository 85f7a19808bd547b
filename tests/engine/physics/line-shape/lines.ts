import type { LineEnds, TurningBundle } from '../../../../engine/physics/index';

/** Radius to the CG, speed and guide of the Quern 25, an invented model, in level flight 1.5 m above the handle. */
export const [RADIUS, SPEED, GUIDE, REACH] = [19.425, 24.66, 18.9, 0.6] as const;
export const LEVEL = Math.asin(1.5 / RADIUS);
export const GRAVITY = 9.80665;

/** Its lines at the elevation φ: the slant rate V/R over cos φ. */
export const bundleAt = (elevation: number, changes: Partial<TurningBundle> = {}): TurningBundle => ({
  count: 2,
  diameter: 0.00038,
  linearMass: 0.0006,
  dragCoefficient: 1.15,
  dragFactor: 1,
  density: 1.225,
  kinematicViscosity: 1.46e-5,
  gravity: GRAVITY,
  rate: SPEED / RADIUS / Math.cos(elevation),
  ...changes,
});

export const endsAt = (elevation: number, changes: Partial<LineEnds> = {}): LineEnds => ({
  guideRadius: GUIDE,
  elevation,
  pull: 25.5,
  handle: REACH,
  ...changes,
});
