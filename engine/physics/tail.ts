import { positive, within } from './domain';

/**
 * Section slope of a thin flat stabiliser or fin, 1/rad: with Helmbold's form it follows measured rectangular flat plates
 * of aspect ratio 2 to 6 within 6 %. Source: fitted to measured slopes of flat plates collected in a public wind-energy library.
 */
export const FLAT_PLATE_SECTION_SLOPE = 5.7;

/**
 * Effective over geometric aspect ratio of a fin that stands on a body with a stabiliser near its root.
 * Source: USAF DATCOM practice, 1.5 to 1.6 (from memory).
 */
export const FIN_END_PLATE = 1.55;

/** Share of its theoretical effect that a hinged surface with an open gap keeps (common practice, no source). */
export const HINGE_EFFICIENCY = 0.85;

/** e in k = 1/(π A e) of a flat stabiliser with square tips and a hinge gap (common practice, no source). */
export const TAIL_SPAN_EFFICIENCY = 0.8;

/**
 * dε/dα = 2 a/(π A): downwash gradient far behind a wing of lift slope a (1/rad) and aspect ratio A.
 * Source: lifting-line theory of the elliptical wing, twice the downwash at the wing; as B. Etkin and L. D. Reid, Dynamics of Flight.
 */
export function downwashGradient(wingSlope: number, aspectRatio: number): number {
  return (2 * wingSlope) / (Math.PI * positive('aspect ratio', aspectRatio));
}

/**
 * τ = 1 − (θ − sin θ)/π, θ = arccos(1 − 2 x_h), x_h = 1 − E: how far a plain flap that is the share E of the chord acts like turning the
 * whole surface; 0 at E = 0, 1 at E = 1. Thin-aerofoil value; gaps and thick boundary layers take some away.
 * Source: H. Glauert, The Elements of Aerofoil and Airscrew Theory (thin aerofoil with hinged flap).
 */
export function flapEffect(chordShare: number): number {
  const theta = Math.acos(1 - 2 * (1 - within('flap share of the chord', chordShare, 0, 1)));
  return 1 - (theta - Math.sin(theta)) / Math.PI;
}

/**
 * η τ(E): effect of a hinged surface that is the share E of the chord, η = 0.85 for its gap (common practice, no source); 1 where
 * the whole surface turns, which has no gap.
 */
export function hingedEffect(chordShare: number): number {
  return chordShare === 1 ? 1 : HINGE_EFFICIENCY * flapEffect(chordShare);
}

/** V_H = l_t S_t/(c̄ S): tail volume coefficient, tail arm l_t (m), areas (m²), mean chord c̄ (m). Definition. */
export function tailVolume(arm: number, tailArea: number, meanChord: number, wingArea: number): number {
  return (arm * tailArea) / (positive('mean chord', meanChord) * positive('wing area', wingArea));
}

/** A surface or body that makes lift with angle of attack. */
export interface LiftingPiece {
  /** m aft of the datum. */
  readonly x: number;
  /** dL/(q dα), m². */
  readonly strength: number;
}

/**
 * x_n = [Σ k_i x_i − C]/Σ k_i: neutral point (m aft of the datum) of pieces of lift strength k_i = S_i a_i (1 − dε_i/dα) (m²) acting at x_i,
 * with the destabilising pitch couple C (m³) of the body. Derivation: the CG about which dM/dα = 0.
 */
export function neutralPoint(pieces: readonly LiftingPiece[], couple: number): number {
  let strength = 0;
  let moment = 0;
  for (let k = 0; k < pieces.length; k++) {
    const piece = pieces[k]!;
    strength += piece.strength;
    moment += piece.strength * piece.x;
  }
  return (moment - couple) / positive('total lift strength', strength);
}
