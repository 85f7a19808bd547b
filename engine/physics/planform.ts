import { positive } from './domain';

/** A wing of two straight-tapered panels that meet on the fuselage centreline; inboard is toward the pilot. */
export interface Planform {
  /** Length of each panel along the span, m. */
  readonly inboardSpan: number;
  readonly outboardSpan: number;
  /** Chord at the centreline and at each tip, m. */
  readonly rootChord: number;
  readonly inboardTipChord: number;
  readonly outboardTipChord: number;
  /** Sweep of each leading edge, rad, tip aft positive. */
  readonly inboardSweep: number;
  readonly outboardSweep: number;
}

/** Lengths in m, areas in m²; x aft of the root leading edge, y outboard of the centreline. */
export interface PlanformMeasures {
  span: number;
  area: number;
  aspectRatio: number;
  meanChord: number;
  meanChordEdge: number;
  quarterChord: number;
  centroidY: number;
  secondMomentY: number;
  halfChordSweep: number;
}

/**
 * Area, mean aerodynamic chord and moments of a wing of two unequal panels.
 *
 *   S_k = s (c_r + c_t)/2,  c̄_k = ⅔ c_r (1 + λ + λ²)/(1 + λ),  ȳ_k = (s/3)(1 + 2λ)/(1 + λ),  λ = c_t/c_r
 *   S = Σ S_k,  c̄ = Σ S_k c̄_k/S,  leading edge of c̄ at Σ S_k ȳ_k tan Λ_k/S,  quarter chord ¼ c̄ behind it
 *   ȳ = Σ ± S_k ȳ_k/S,  ∫ y² c dy = Σ s³ (c_r + 3 c_t)/12  (outboard +, inboard −)
 *
 * `halfChordSweep`: sweep of the half-chord line, area-weighted, rad. `secondMomentY`: ∫ y² c dy, m⁴.
 * Source of c̄ and ȳ of one panel: D. P. Raymer, Aircraft Design: A Conceptual Approach; of two panels: derivation from
 * c̄ = (1/S) ∫ c² dy and the area-weighted mean of the leading edge.
 */
export function measurePlanform(w: Planform): PlanformMeasures {
  const inboard = panel(w.inboardSpan, w.rootChord, w.inboardTipChord, w.inboardSweep);
  const outboard = panel(w.outboardSpan, w.rootChord, w.outboardTipChord, w.outboardSweep);
  const span = w.inboardSpan + w.outboardSpan;
  const area = inboard.area + outboard.area;
  const mean = (a: number, b: number): number => (inboard.area * a + outboard.area * b) / area;
  const meanChord = mean(inboard.meanChord, outboard.meanChord);
  const meanChordEdge = mean(inboard.edge, outboard.edge);
  return {
    span,
    area,
    aspectRatio: (span * span) / area,
    meanChord,
    meanChordEdge,
    quarterChord: meanChordEdge + meanChord / 4,
    centroidY: mean(-inboard.y, outboard.y),
    secondMomentY: inboard.secondMoment + outboard.secondMoment,
    halfChordSweep: mean(inboard.halfChordSweep, outboard.halfChordSweep),
  };
}

function panel(span: number, root: number, tip: number, sweep: number) {
  const s = positive('panel span', span);
  const taper = positive('tip chord', tip) / positive('root chord', root);
  const y = ((s / 3) * (1 + 2 * taper)) / (1 + taper);
  return {
    area: (s * (root + tip)) / 2,
    meanChord: ((2 / 3) * root * (1 + taper + taper * taper)) / (1 + taper),
    y,
    edge: y * Math.tan(sweep),
    secondMoment: (s * s * s * (root + 3 * tip)) / 12,
    halfChordSweep: Math.atan(Math.tan(sweep) + (tip - root) / (2 * s)),
  };
}

/**
 * Where a load proportional to chord and to the square of the local speed V (1 + y/R) acts across the span.
 *
 *   y(R) = ∫ y c (1 + y/R)² dy / ∫ c (1 + y/R)² dy ≈ ȳ + κ/R,  κ = 2 (∫ y² c dy/S − ȳ²)
 *
 * Gives the limit ȳ (m) for R → ∞ and κ (m²); first order in span/R. Used for the profile drag. Derivation: expansion in y/R.
 */
export function chordLoadStation(m: PlanformMeasures): { station: number; turn: number } {
  return { station: m.centroidY, turn: 2 * (m.secondMomentY / m.area - m.centroidY * m.centroidY) };
}
