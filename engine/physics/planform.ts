import { nonNegative, positive } from './domain';
import { type Outline, outlineBays, overBays } from './outline';

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
  /**
   * Corners of a panel's edge from its leading edge round the tip to its trailing edge, in the place of its span, tip chord and sweep:
   * y0, x0, y1, x1, … y from the centreline toward its own tip and x aft of the root leading edge, m. From the first and the last
   * corner the edges run straight to the ends of the root chord.
   */
  readonly inboardEdge?: Outline;
  readonly outboardEdge?: Outline;
}

/** Lengths in m, areas in m²; x aft of the root leading edge, y outboard of the centreline. */
export interface PlanformMeasures {
  span: number;
  /** As typed, or where the outermost corner of its edge is. */
  inboardSpan: number;
  outboardSpan: number;
  area: number;
  aspectRatio: number;
  meanChord: number;
  meanChordEdge: number;
  quarterChord: number;
  centroidY: number;
  secondMomentY: number;
  halfChordSweep: number;
}

/** The closed outline of a panel whose edge is given by its corners, the root chord as its last side. */
export const panelOutline = (edge: Outline, rootChord: number): Outline => [
  0,
  0,
  ...edge,
  0,
  positive('root chord', rootChord),
];

/**
 * Area, mean aerodynamic chord and moments of a wing of two unequal panels.
 *
 *   S_k = s (c_r + c_t)/2,  c̄_k = ⅔ c_r (1 + λ + λ²)/(1 + λ),  ȳ_k = (s/3)(1 + 2λ)/(1 + λ),  λ = c_t/c_r
 *   S = Σ S_k,  c̄ = Σ S_k c̄_k/S,  leading edge of c̄ at Σ S_k ȳ_k tan Λ_k/S,  quarter chord ¼ c̄ behind it
 *   ȳ = Σ ± S_k ȳ_k/S,  ∫ y² c dy = Σ s³ (c_r + 3 c_t)/12  (outboard +, inboard −)
 *
 * `halfChordSweep`: sweep of the half-chord line, area-weighted, rad. `secondMomentY`: ∫ y² c dy, m⁴.
 * A panel that is given by its edge: S = ∫ c dy, c̄ = ∫ c² dy/S, its leading edge at ∫ x_l c dy/S, with c and x_l straight between
 * corners; its half-chord line is the straight one from the middle of the root with tan Λ_½ = ∫ (x_½ − ½ c_r) y c dy/∫ y² c dy.
 * Source of c̄ and ȳ of one panel: D. P. Raymer, Aircraft Design: A Conceptual Approach; of two panels: derivation from
 * c̄ = (1/S) ∫ c² dy and the area-weighted mean of the leading edge.
 */
export function measurePlanform(w: Planform): PlanformMeasures {
  const inboard = w.inboardEdge
    ? edgedPanel(w.inboardEdge, w.rootChord)
    : panel(w.inboardSpan, w.rootChord, w.inboardTipChord, w.inboardSweep);
  const outboard = w.outboardEdge
    ? edgedPanel(w.outboardEdge, w.rootChord)
    : panel(w.outboardSpan, w.rootChord, w.outboardTipChord, w.outboardSweep);
  const span = inboard.span + outboard.span;
  const area = inboard.area + outboard.area;
  const mean = (a: number, b: number): number => (inboard.area * a + outboard.area * b) / area;
  const meanChord = mean(inboard.meanChord, outboard.meanChord);
  const meanChordEdge = mean(inboard.edge, outboard.edge);
  return {
    span,
    inboardSpan: inboard.span,
    outboardSpan: outboard.span,
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

interface PanelMeasures {
  readonly span: number;
  readonly area: number;
  readonly meanChord: number;
  readonly y: number;
  readonly edge: number;
  readonly secondMoment: number;
  readonly halfChordSweep: number;
}

function edgedPanel(edge: Outline, root: number): PanelMeasures {
  const bays = outlineBays(panelOutline(edge, root));
  nonNegative('least distance of a corner from the centreline', bays[0]!.from);
  const area = overBays(bays, (_, c) => c);
  const secondMoment = overBays(bays, (y, c) => y * y * c);
  const aft = overBays(bays, (y, c, e) => (e + c / 2 - root / 2) * y * c);
  return {
    span: bays.at(-1)!.to,
    area,
    meanChord: overBays(bays, (_, c) => c * c) / area,
    y: overBays(bays, (y, c) => y * c) / area,
    edge: overBays(bays, (_, c, e) => e * c) / area,
    secondMoment,
    halfChordSweep: Math.atan(aft / secondMoment),
  };
}

function panel(span: number, root: number, tip: number, sweep: number): PanelMeasures {
  const s = positive('panel span', span);
  const taper = positive('tip chord', tip) / positive('root chord', root);
  const y = ((s / 3) * (1 + 2 * taper)) / (1 + taper);
  return {
    span: s,
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
