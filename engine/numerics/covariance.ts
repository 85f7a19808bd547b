import { SVD } from 'ml-matrix';
import { matrixOf, seenDirections } from './least-squares';

/** What the observations tell of the parameters near a solution. */
export interface Determination {
  /** How many directions in the space of the parameters the observations tell apart. */
  readonly rank: number;
  /** Per parameter: whether it has one value. */
  readonly determined: readonly boolean[];
  /** Per parameter: no observation changes with it. */
  readonly silent: readonly boolean[];
  /**
   * Directions that change nothing, among the parameters that aren't silent; in units of each parameter's own effect, so that a large
   * component means a parameter that takes part.
   */
  readonly blind: readonly (readonly number[])[];
  /** (JᵀJ)⁻¹, row by row; NaN for a parameter that isn't determined. */
  readonly covariance: readonly (readonly number[])[];
}

/** Of a scale of the parameter the observations see less than this share of a measuring error: it has no effect. */
const SILENT = 1e-6;
/** A square of a component below this is noise. */
const TAKES_PART = 1e-6;

/**
 * Rank, blind directions and covariance from the Jacobian of the residuals in measuring errors.
 *
 *   J = U Σ Vᵀ,  C = (JᵀJ)⁻¹ = V Σ⁻² Vᵀ
 *
 * Columns are brought to length one first. The covariance of the parameters is s² C, s² the variance of a residual;
 * `loosest` as for `leastSquares`. Source: JCGM 100:2008, H.3; W. H. Press and others, Numerical Recipes, section 15.4 (from memory).
 */
export function determine(jacobian: readonly Float64Array[], loosest?: number): Determination {
  const count = jacobian.length;
  const norms = jacobian.map((column) => Math.hypot(...column));
  const heard = [...norms.keys()].filter((j) => norms[j]! > SILENT);
  const silent = norms.map((norm) => norm <= SILENT);
  const covariance = jacobian.map(() => new Array<number>(count).fill(Number.NaN));
  if (heard.length === 0) return { rank: 0, determined: silent.map(() => false), silent, blind: [], covariance };
  const svd = new SVD(matrixOf(jacobian, norms, heard));
  const { rightSingularVectors: v, diagonal } = svd;
  const seen = seenDirections(svd, norms, heard, loosest);
  const direction = (k: number): number[] => {
    const whole = new Array<number>(count).fill(0);
    for (const [c, j] of heard.entries()) whole[j] = v.get(c, k);
    return whole;
  };
  const all = diagonal.map((_, k) => direction(k));
  const blind = all.filter((_, k) => !seen[k]);
  const determined = silent.map((isSilent, j) => !isSilent && blind.every((each) => each[j]! ** 2 < TAKES_PART));
  for (let a = 0; a < count; a++) {
    for (let b = 0; b < count; b++) {
      if (!determined[a] || !determined[b]) continue;
      let sum = 0;
      for (const [k, s] of diagonal.entries()) if (seen[k]) sum += (all[k]![a]! * all[k]![b]!) / (s * s);
      covariance[a]![b] = sum / (norms[a]! * norms[b]!);
    }
  }
  return { rank: seen.filter(Boolean).length, determined, silent, blind, covariance };
}
