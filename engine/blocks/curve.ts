/** Airspeeds in m/s at which engine curves (thrust, torque, power, shaft speed, fuel flow) are tabulated. */
export const AIRSPEED_KNOTS: readonly number[] = Array.from({ length: 21 }, (_, k) => 5 * k);
