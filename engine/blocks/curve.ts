import { type AnySpecs, isCurve } from './block';

/** Airspeeds in m/s at which engine curves (thrust, torque, power, shaft speed, fuel flow) are tabulated. */
export const AIRSPEED_KNOTS: readonly number[] = Array.from({ length: 21 }, (_, k) => 5 * k);

/** How many slots a field or result takes: one, or one a knot. */
export const slotCount = (spec: AnySpecs[string]): number =>
  isCurve(spec) ? (spec.knots ?? AIRSPEED_KNOTS.length) : 1;
