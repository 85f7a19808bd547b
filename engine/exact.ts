/**
 * Numbers that are exact by definition: sizes of units, from which everything else in the unit tables is computed, and the
 * standard acceleration that the physics takes too. No constant is written down twice.
 *
 * Source: NIST Special Publication 811, 2008 edition, "Guide for the Use of the International System of Units (SI)",
 * appendix B.8 (factors printed there in bold are exact) and B.6 for the international foot. From memory, not read: the
 * pound and ounce, the ounce-force, the pound per square inch, the knot, the US fluid ounce, both horsepowers, the slug, the
 * inch of mercury and the zero of the Fahrenheit scale.
 */

/** International inch, m. */
export const INCH = 0.0254;
/** International foot, m. */
export const FOOT = 0.3048;
/** International yard, m. */
export const YARD = 0.9144;
/** International mile, m. */
export const MILE = 1609.344;
/** International nautical mile, m. */
export const NAUTICAL_MILE = 1852;
/** Avoirdupois pound, kg. */
export const POUND = 0.45359237;
/** Avoirdupois ounce: one sixteenth of a pound, kg. */
export const OUNCE = POUND / 16;
/** Standard acceleration of free fall, m/s². */
export const STANDARD_GRAVITY = 9.80665;
/** Pound-force: the weight of a pound under standard gravity, N. */
export const POUND_FORCE = POUND * STANDARD_GRAVITY;
/** Ounce-force, N. */
export const OUNCE_FORCE = OUNCE * STANDARD_GRAVITY;
/** Slug: the mass that a pound-force accelerates by 1 ft/s², kg. */
export const SLUG = POUND_FORCE / FOOT;
/** US gallon: 231 cubic inches, m³. */
export const GALLON = 231 * INCH ** 3;
/** US fluid ounce: one 128th of a gallon, m³. */
export const FLUID_OUNCE = GALLON / 128;
/** Horsepower of 550 foot pounds-force per second, W. */
export const HORSEPOWER = 550 * FOOT * POUND_FORCE;
/** Metric horsepower of 75 kilogram-force metres per second, W. */
export const METRIC_HORSEPOWER = 75 * STANDARD_GRAVITY;
/** Pound-force per square inch, Pa. */
export const PSI = POUND_FORCE / INCH ** 2;
/** Conventional millimetre of mercury: 13 595.1 kg/m³ under standard gravity, Pa. */
export const MILLIMETRE_OF_MERCURY = 13.5951 * STANDARD_GRAVITY;
/** Conventional inch of mercury, Pa. */
export const INCH_OF_MERCURY = MILLIMETRE_OF_MERCURY * 25.4;
/** One degree of angle, rad. */
export const DEGREE = Math.PI / 180;
/** One turn, rad. */
export const TURN = 2 * Math.PI;
/** Minute and hour, s. */
export const MINUTE = 60;
export const HOUR = 3600;
/** Temperature of the zero of the Celsius scale, K. */
export const CELSIUS_ZERO = 273.15;
/** Absolute zero lies this far below the zero of the Fahrenheit scale, °F. */
export const FAHRENHEIT_OFFSET = 459.67;
/** One degree Fahrenheit as a difference, K. */
export const FAHRENHEIT_DEGREE = 1 / 1.8;
