import { PROPELLER_KNOTS } from '../physics/index';
import { type AnySpecs, isCurve } from './block';

/** Airspeeds in m/s at which engine curves (thrust, torque, power, shaft speed, fuel flow) are tabulated. */
export const AIRSPEED_KNOTS: readonly number[] = Array.from({ length: 21 }, (_, k) => 5 * k);

const KNOTS = { airspeed: AIRSPEED_KNOTS.length, propeller: PROPELLER_KNOTS } as const;

/** How many slots a field or result takes: one, or one a knot. */
export const slotCount = (spec: AnySpecs[string]): number => (isCurve(spec) ? KNOTS[spec.curve] : 1);
