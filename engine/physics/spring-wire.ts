import { positive, within } from './domain';

/**
 * S = A/d^m: least tensile strength of spring wire (Pa), A (MPa·mm^m), d (m).
 * Source: J. E. Shigley, Mechanical Engineering Design (Budynas and Nisbett), table 10-4.
 */
const springWire =
  (A: number, m: number) =>
  (diameter: number): number =>
    (1e6 * A) / (1000 * diameter) ** m;

/** Least and greatest diameter of the law for music wire, m. Source: J. E. Shigley, table 10-4. */
export const MUSIC_WIRE_RANGE: readonly [number, number] = [0.0001, 0.0065];
/** A (MPa·mm^m) and m of music wire, and of type 302 stainless (from memory). */
export const MUSIC_WIRE_LAW = [2211, 0.145] as const;
export const STAINLESS_WIRE_LAW = [1867, 0.146] as const;
const musicWire = springWire(...MUSIC_WIRE_LAW);

/** Music wire, ASTM A228: least tensile strength (Pa) at the diameter d (m), from 0.1 to 6.5 mm. The table of the standard lies 1 to 4 % lower. */
export const musicWireStrength = (diameter: number): number =>
  musicWire(within('music wire diameter', diameter, ...MUSIC_WIRE_RANGE));
/** Type 302 stainless (constants from memory; used below its least diameter of 0.3 mm). */
export const stainlessWireStrength = springWire(...STAINLESS_WIRE_LAW);

/**
 * Share of the tensile strength at which music wire begins to yield in tension and bending: the middle of 0.65 to 0.75.
 * Source: J. E. Shigley, table 10-5.
 */
export const MUSIC_WIRE_ELASTIC_SHARE = 0.7;

/** Up to which diameter (m) which moduli (Pa) hold. Source: J. E. Shigley, table 10-5. */
const MODULI: readonly (readonly [diameter: number, young: number, shear: number])[] = [
  [0.0008, 203.4e9, 82.7e9],
  [0.00161, 200e9, 81.7e9],
  [0.003, 196.5e9, 81.0e9],
  [Number.POSITIVE_INFINITY, 193e9, 80.0e9],
];

/** Young's and shear modulus (Pa) of music wire of the diameter d (m). Source: J. E. Shigley, table 10-5. */
export function musicWireModuli(diameter: number): { readonly young: number; readonly shear: number } {
  const [, young, shear] = MODULI.find(([upTo]) => positive('wire diameter', diameter) <= upTo)!;
  return { young, shear };
}
