import { positive } from './domain';
import { musicWireModuli, musicWireStrength, stainlessWireStrength } from './spring-wire';

/** What a kind of line is made of. */
export interface LineKind {
  readonly name: string;
  /** Share of the circle of its diameter that is filled. */
  readonly filled: number;
  /** Of the filling, kg/m³. */
  readonly density: number;
  /** Of the whole line on the filled area, Pa. */
  readonly modulus: number;
  /** Of the line on the filled area, Pa, at the diameter d (m). */
  readonly strength: (diameter: number) => number;
  /** On diameter × length; NaN: of a smooth cylinder by the local Reynolds number. */
  readonly dragCoefficient: number;
}

/** Breaking load of a strand over the sum of its wires' (common practice, no source). */
export const STRAND_SHARE = 0.85;

/**
 * Stranded: seven equal wires, each a third of the diameter, fill 7/9 of the circle; density of stainless 304 from W.
 * D. Callister, Materials Science, table B.1; modulus of type 302 wire (public spring table), which a laid strand does
 * not quite reach; a strand breaks at about 0.85 of the sum of its wires (common practice, no source); drag coefficient
 * the middle of 1.0 to 1.2 for stranded rope, S. F. Hoerner, Fluid-Dynamic Drag, ch. IV (from memory).
 */
const stranded: LineKind = {
  name: 'stranded_steel',
  filled: 7 / 9,
  density: 8000,
  modulus: 193e9,
  strength: (diameter) => STRAND_SHARE * stainlessWireStrength(diameter / 3),
  dragCoefficient: 1.1,
};

/** Solid: music wire, density and modulus (d < 0.8 mm) from J. E. Shigley, table 10-5; smooth cylinder. */
const solid: LineKind = {
  name: 'solid_steel',
  filled: 1,
  density: 7800,
  modulus: musicWireModuli(0.0004).young,
  strength: musicWireStrength,
  dragCoefficient: Number.NaN,
};

/**
 * Braid of polyethylene fibre: fibre density and modulus from a maker's fact sheet and a university fibre table (SK75
 * grade); filled share 0.7 and half of the fibre's modulus are estimates without a source; strength so that the circle
 * carries 2.06 GPa, as the 60 lbf rating at 0.016 in of AMA control line general rule 5.3.5.1 (a knot takes half of
 * it; other sizes are rated from 0.85 to 1.32 of that); drag coefficient of a braided tether, attributed to U. Fechner et al., Renewable Energy 83 (2015).
 */
const braid: LineKind = {
  name: 'polyethylene_braid',
  filled: 0.7,
  density: 975,
  modulus: 60e9,
  strength: () => 2.06e9 / 0.7,
  dragCoefficient: 0.958,
};

export const LINE_KINDS: readonly LineKind[] = [stranded, solid, braid];

const circle = (diameter: number): number => (Math.PI / 4) * positive('line diameter', diameter) * diameter;

/** μ = ρ f π d²/4: mass per length of one line, kg/m. A pair on the scale is better. */
export function lineLinearMass(kind: LineKind, diameter: number): number {
  return kind.density * kind.filled * circle(diameter);
}

/** E A = E f π d²/4: stiffness of one line, N. */
export function lineStiffness(kind: LineKind, diameter: number): number {
  return kind.modulus * kind.filled * circle(diameter);
}

/** S f π d²/4: breaking load of one line, N, without its ends, by its kind alone. Rated rows and the packet's figure are better. */
export function lineBreakingLoad(kind: LineKind, diameter: number): number {
  return kind.strength(diameter) * kind.filled * circle(diameter);
}
