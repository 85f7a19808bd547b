import { solveDense } from '../numerics/index';
import { positive } from './domain';
import { depthAt, type Outline, outlineBays, overBays } from './outline';
import { type Planform, panelOutline } from './planform';

export interface LiftingLine {
  /** Lift slope of the wing in straight flight, 1/rad. */
  slope: number;
  /** C_Di = C_L² (1 + δ)/(π A), straight flight. */
  delta: number;
  /** y_L(R) ≈ station + turn/R: where the lift acts, m outboard of the centreline; `turn` in m². */
  station: number;
  turn: number;
}

/** Terms of the series for everyday use: slope within 1e-4 and lift station within 0.01 mm of 200 terms on wings like these. */
export const LIFTING_LINE_TERMS = 20;

interface Series {
  readonly terms: number;
  /** sin nθ_j, row j = 0 … terms − 1, column n − 1. */
  readonly sines: Float64Array;
  readonly matrix: Float64Array;
  readonly copy: Float64Array;
  readonly straight: Float64Array;
  readonly turning: Float64Array;
}
const prepared = new Map<number, Series>();

/**
 * Prandtl's lifting line of an unswept, untwisted wing of two unequal tapered panels in circular flight.
 *
 * With y = y_m − (b/2) cos θ, local speed V (1 + y/R) and Γ = 2 b V Σ A_n sin nθ (odd and even n), the section law
 * Γ = ½ V_l c a_0 (α − w/V_l) and the downwash w = V Σ n A_n sin nθ/sin θ give at each θ
 *
 *   Σ A_n sin nθ (sin θ + n μ) = μ α (1 + y/R) sin θ,  μ = c a_0/(4 b)
 *
 * which is linear in 1/R: A_n = α (A⁰_n + A¹_n/R). Then
 *
 *   a = π A A⁰_1,  δ = Σ_{n>1} n (A⁰_n/A⁰_1)²,
 *   y_L = ∫ y Γ (1 + y/R) dy/∫ Γ (1 + y/R) dy, expanded to first order in 1/R.
 *
 * b span (m), c chord (m), a_0 section slope (1/rad), R radius of the circle to the centreline (m). The wake is taken as
 * straight (its curvature is of the order b/R); sweep is not seen.
 * Source: L. Prandtl's theory with the series of H. Glauert, The Elements of Aerofoil and Airscrew Theory, ch. XI; the
 * terms in 1/R: derivation from the same equation with the local speed.
 */
export function liftingLine(wing: Planform, sectionSlope: number, terms: number = LIFTING_LINE_TERMS): LiftingLine {
  const root = positive('root chord', wing.rootChord);
  const inboard = wing.inboardEdge
    ? edgedPanel(wing.inboardEdge, root)
    : panel(positive('inboard panel span', wing.inboardSpan), root, wing.inboardTipChord);
  const outboard = wing.outboardEdge
    ? edgedPanel(wing.outboardEdge, root)
    : panel(positive('outboard panel span', wing.outboardSpan), root, wing.outboardTipChord);
  const chordAt = (y: number): number => (y < 0 ? inboard.chordAt(-y) : outboard.chordAt(y));
  return liftingLineOfChords(chordAt, inboard.span, outboard.span, inboard.area + outboard.area, sectionSlope, terms);
}

/** A panel as the lifting line sees it: its chord (m) at a distance from the centreline. */
interface Panel {
  readonly span: number;
  readonly area: number;
  chordAt(y: number): number;
}

function panel(span: number, root: number, tip: number): Panel {
  const grows = (tip - root) / span;
  return { span, area: (span * (root + tip)) / 2, chordAt: (y) => root + y * grows };
}

function edgedPanel(edge: Outline, root: number): Panel {
  const bays = outlineBays(panelOutline(edge, root));
  return {
    span: bays.at(-1)!.to,
    area: overBays(bays, (_, chord) => chord),
    chordAt: (y) => depthAt(bays, y),
  };
}

/** The same for any chord (m) as a function of y (m, outboard positive) from −inboard to outboard, with its area (m²). */
export function liftingLineOfChords(
  chordAt: (y: number) => number,
  inboard: number,
  outboard: number,
  area: number,
  sectionSlope: number,
  terms: number,
): LiftingLine {
  const a0 = positive('section slope', sectionSlope);
  const b = inboard + outboard;
  const middle = (outboard - inboard) / 2;
  const s = seriesOf(terms);
  for (let j = 0; j < terms; j++) {
    const theta = ((j + 1) * Math.PI) / (terms + 1);
    const sine = Math.sin(theta);
    const y = middle - (b / 2) * Math.cos(theta);
    const mu = (chordAt(y) * a0) / (4 * b);
    for (let n = 1; n <= terms; n++) {
      s.matrix[j * terms + n - 1] = s.sines[j * terms + n - 1]! * (sine + n * mu);
    }
    s.straight[j] = mu * sine;
    s.turning[j] = mu * sine * y;
  }
  s.copy.set(s.matrix);
  solveDense(s.matrix, s.straight, terms);
  solveDense(s.copy, s.turning, terms);

  const first = s.straight[0]!;
  let delta = 0;
  for (let n = 2; n <= terms; n++) delta += n * (s.straight[n - 1]! / first) ** 2;
  const lift = first;
  const moment = firstMoment(s.straight, middle, b);
  const station = moment / lift;
  const liftTurn = moment + s.turning[0]!;
  const momentTurn = secondMoment(s.straight, middle, b) + firstMoment(s.turning, middle, b);
  return {
    slope: ((Math.PI * b * b) / area) * first,
    delta,
    station,
    turn: (momentTurn - station * liftTurn) / lift,
  };
}

/** ∫ y Γ dy and ∫ y² Γ dy in units of ∫ Γ dy for A_1 = 1: orthogonality of sines on 0 … π. */
const firstMoment = (A: Float64Array, middle: number, b: number): number => middle * A[0]! - (b / 4) * A[1]!;
const secondMoment = (A: Float64Array, middle: number, b: number): number =>
  middle * middle * A[0]! - (middle * b * A[1]!) / 2 + ((b * b) / 16) * (A[0]! + A[2]!);

/** Sines and scratch for one number of terms, made once: they are the larger part of the work. */
function seriesOf(terms: number): Series {
  const known = prepared.get(terms);
  if (known) return known;
  if (!(Number.isInteger(terms) && terms >= 3)) {
    throw new RangeError(`terms is ${terms}; it must be a whole number of 3 or more`);
  }
  const sines = new Float64Array(terms * terms);
  for (let j = 0; j < terms; j++) {
    for (let n = 1; n <= terms; n++) sines[j * terms + n - 1] = Math.sin((n * (j + 1) * Math.PI) / (terms + 1));
  }
  const series = {
    terms,
    sines,
    matrix: new Float64Array(terms * terms),
    copy: new Float64Array(terms * terms),
    straight: new Float64Array(terms),
    turning: new Float64Array(terms),
  };
  prepared.set(terms, series);
  return series;
}
