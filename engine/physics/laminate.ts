import { nonNegative } from './domain';

/**
 * Numbers of one layer: thickness (m), areal mass (kg/m²), Young's modulus along the span in stretching and in bending by itself (Pa; NaN: not
 * known). The two differ where a layer is made of plies of its own.
 */
export const LAYER_STRIDE = 4;

/** What folding a stack gives, in the order in which `foldLayers` writes it. */
export const STACK_NAMES = ['areal_mass', 'thickness', 'stiffness'] as const;

/** A layer of a material: areal mass w = ρ t. */
export function writeMaterialLayer(
  thickness: number,
  density: number,
  modulus: number,
  bendingModulus: number,
  out: Float64Array,
  at: number,
  stride: number,
): void {
  out[at] = thickness;
  out[at + stride] = thickness * density;
  out[at + 2 * stride] = modulus;
  out[at + 3 * stride] = bendingModulus;
}

/** A glue line or skin known by its areal mass alone: no thickness, no stiffness of its own. */
export function writeMassLayer(arealMass: number, out: Float64Array, at: number, stride: number): void {
  out[at] = 0;
  out[at + stride] = arealMass;
  out[at + 2 * stride] = 0;
  out[at + 3 * stride] = 0;
}

/**
 * Adds layers, from one face to the other, into a stack.
 *
 *   w = Σ w_i,  t = Σ t_i,
 *   z̄ = Σ E_i t_i z_i / Σ E_i t_i  (neutral axis; z_i the middle of layer i),
 *   D = Σ [E_b,i t_i³/12 + E_i t_i (z_i − z̄)²]
 *
 * w areal mass (kg/m²), t thickness (m), D bending stiffness EI per width (N·m), E_i and E_b,i moduli of a layer in stretching
 * and in bending about its own middle, strain linear over the thickness, layers that do not slip, no Poisson effect. A layer with thickness and unknown modulus makes D NaN and leaves w and t alone.
 * Derivation: composite beam by plane sections (parallel-axis theorem with E as weight).
 */
export function foldLayers(layers: Float64Array, count: number, out: Float64Array): void {
  let arealMass = 0;
  let thickness = 0;
  let stretch = 0;
  let moment = 0;
  for (let i = 0; i < count; i++) {
    const o = i * LAYER_STRIDE;
    const t = layers[o]!;
    arealMass += layers[o + 1]!;
    const et = t === 0 ? 0 : layers[o + 2]! * t;
    stretch += et;
    moment += et * (thickness + t / 2);
    thickness += t;
  }
  out[0] = arealMass;
  out[1] = thickness;
  out[2] = bendingStiffness(layers, count, stretch === 0 ? 0 : moment / stretch);
}

function bendingStiffness(layers: Float64Array, count: number, neutral: number): number {
  let stiffness = 0;
  let below = 0;
  for (let i = 0; i < count; i++) {
    const t = layers[i * LAYER_STRIDE]!;
    if (t === 0) continue;
    const arm = below + t / 2 - neutral;
    const o = i * LAYER_STRIDE;
    stiffness += (layers[o + 3]! * t * t * t) / 12 + layers[o + 2]! * t * arm * arm;
    below += t;
  }
  return stiffness;
}

/**
 * EI = D c: bending stiffness (N·m²) of a flat surface of chord c (m) cut from a stack of stiffness D per width (N·m),
 * bent along its span. Derivation: D times the width.
 */
export function surfaceStiffness(stiffnessPerWidth: number, chord: number): number {
  return stiffnessPerWidth * nonNegative('chord', chord);
}
