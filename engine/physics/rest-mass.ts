import { nonNegative } from './domain';

/** What the rest may weigh, kg, both ends allowed; Infinity: however much. `none`: the CG can't lie there whatever the rest weighs. */
export type RestMass =
  | { readonly status: 'settled'; readonly least: number; readonly most: number }
  | { readonly status: 'none' };

/**
 * x(m) = (M x_k + m x_r)/(M + m),  so m = M (s − x_k)/(x_r − s) brings the CG to s
 *
 * What the rest of a model may weigh so that the CG lies from `low` to `high` (m): M mass of what is known (kg, 0 or more), x_k its
 * CG, x_r the CG of the rest (m, aft positive), which stays where it is however heavy the rest becomes. With m from 0 to ∞ the CG
 * moves one way from x_k towards x_r. Nothing known (M = 0): any rest does whose CG lies there itself.
 * Derivation: moments about the wanted CG.
 */
export function restMass(known: number, knownX: number, restX: number, low: number, high: number): RestMass {
  const mass = nonNegative('known mass', known);
  if (mass === 0 || restX === knownX) {
    return restX >= low && restX <= high ? { status: 'settled', least: 0, most: Infinity } : { status: 'none' };
  }
  const aft = restX > knownX;
  // The limit that the CG passes first on its way, and the one that it passes last.
  const [near, far] = aft ? [low, high] : [high, low];
  const passes = (limit: number): boolean => (aft ? limit < restX : limit > restX);
  const ahead = (limit: number): boolean => (aft ? limit >= knownX : limit <= knownX);
  if (!passes(near) || !ahead(far)) return { status: 'none' };
  const massFor = (limit: number): number => (mass * (limit - knownX)) / (restX - limit);
  return {
    status: 'settled',
    least: ahead(near) ? massFor(near) : 0,
    most: passes(far) ? massFor(far) : Infinity,
  };
}
