import { nonNegative, positive, within } from './domain';

/**
 * The CG of a model that is there, from a finger, a scale or a string. SI; x aft of the wing root leading edge, y outboard of the
 * fuselage centreline. Each gives the place and its standard deviation (m); the model rests level, and still.
 */
export interface FoundAt {
  readonly at: number;
  readonly error: number;
}

/** One support of a model that rests on scales: what its scale reads, kg, and where it stands, m. */
export interface Support {
  readonly reading: number;
  readonly place: number;
}

/**
 * x = x_e + d,  s_x = s_d
 *
 * Balanced on two fingertips: d behind the leading edge (m, aft positive), which stands at x_e where the fingers are, both as far out.
 * The model tips about the line between them until the CG stands over it. Derivation: moments about that line.
 */
export const fingertipCg = (edge: number, behind: number, error: number): FoundAt => ({
  at: edge + behind,
  error: nonNegative('error of the fingertip', error),
});

/**
 * M = Σ R_i,  x = Σ R_i x_i/M,  s_x² = Σ {[(x_i − x) s_R]² + (R_i s_i)²}/M²
 *
 * Resting on two or three supports, of which the scale reads R_i (kg) at x_i (m); y alike. Each reading is off by s_R, each place by
 * s_i. With the model level its height plays no part. Derivation: balance of forces and moments; JCGM 100, eq. 10.
 * NaN where nothing is read at all.
 */
export function cgOnScales(supports: readonly Support[], readingError: number, placeError: number): FoundAt {
  nonNegative('error of a scale', readingError);
  nonNegative('error of a support', placeError);
  let mass = 0;
  let moment = 0;
  for (const { reading, place } of supports) {
    mass += nonNegative('reading of a scale', reading);
    moment += reading * place;
  }
  const at = moment / mass;
  let variance = 0;
  for (const { reading, place } of supports) {
    variance += ((place - at) * readingError) ** 2 + (reading * placeError) ** 2;
  }
  return mass > 0 ? { at, error: Math.sqrt(variance) / mass } : { at: Number.NaN, error: Number.NaN };
}

/** Hung up with its nose this far from level, rad, or more, a model tells nothing of its CG: half a right angle. */
export const MOST_DROOP = Math.PI / 4;

/**
 * x = x_g − (y − y_g) tan φ,  s_x² = [(y − y_g) (1 + tan² φ) s_φ]² + s_i²
 *
 * Hung by both leadouts, inboard tip up: the pull goes through the middle between them at the guide (x_g, y_g), since a free
 * bellcrank pulls both alike, and the CG (x, y) hangs straight below it. φ: how far the nose droops below level (rad, nose down
 * positive). s_φ error of the angle, s_i of the guide's place. Derivation: two forces in one line.
 */
export function hangingCg(
  guide: { readonly x: number; readonly y: number },
  y: number,
  droop: number,
  errors: { readonly angle: number; readonly place: number },
): FoundAt {
  const below = positive('CG below the guide', y - guide.y);
  const slope = Math.tan(within('droop', droop, -MOST_DROOP, MOST_DROOP));
  return {
    at: guide.x - below * slope,
    error: Math.hypot(below * (1 + slope ** 2) * nonNegative('error of the droop', errors.angle), errors.place),
  };
}

/**
 * y = y_p + R (y_t − y_p)/M,  s_y² = {[(y_t − y_p) s_R]² + (R s_i)²}/M²
 *
 * A scale under one tip: the model of mass M (kg) rests on an edge along the fuselage at y_p (m outboard) and on the scale at y_t, which
 * reads R (kg). Under the inboard tip y_t is negative. Derivation: moments about the edge.
 */
export function tipScaleCg(
  mass: number,
  edge: number,
  tip: Support,
  errors: { readonly reading: number; readonly place: number },
): FoundAt {
  const arm = tip.place - edge;
  const reading = nonNegative('reading under the tip', tip.reading);
  const error = Math.hypot(arm * nonNegative('error of a scale', errors.reading), reading * errors.place);
  return { at: edge + (reading * arm) / positive('mass', mass), error: error / mass };
}

/**
 * x = Σ (x_k/s_k²)/Σ (1/s_k²),  s² = 1/Σ (1/s_k²)
 *
 * Several ways of finding the same place as one, each counted by how sure it is. Ways that were not gone (NaN) don't count; one
 * without any error decides alone. Derivation: least squares with independent errors (JCGM 100, 4.2 and H.3).
 */
export function foundTogether(ways: readonly FoundAt[]): FoundAt {
  const gone = ways.filter(({ at }) => !Number.isNaN(at));
  const exact = gone.find(({ error }) => error === 0);
  if (exact) return exact;
  let weight = 0;
  let sum = 0;
  for (const { at, error } of gone) {
    weight += 1 / error ** 2;
    sum += at / error ** 2;
  }
  return weight > 0 ? { at: sum / weight, error: 1 / Math.sqrt(weight) } : { at: Number.NaN, error: Number.NaN };
}

/** A mass and where it stands. */
export interface MassAt {
  readonly mass: number;
  readonly at: number;
}

/**
 * Δm = M_f − M_t,  x = (M_f x_f − M_t x_t)/Δm
 *
 * What the table lacks (Δm > 0) or has too much (Δm < 0), and where, so that its mass M_t (kg) with its CG x_t (m) becomes the model's, M_f
 * with x_f. Where both weigh the same no mass anywhere explains a CG that lies elsewhere: then x is infinite, or NaN where it does not.
 * Derivation: moments about the datum.
 */
export function explainingMass(table: MassAt, found: MassAt): MassAt {
  const mass = positive('mass found', found.mass) - positive('mass of the table', table.mass);
  return { mass, at: (found.mass * found.at - table.mass * table.at) / mass };
}
