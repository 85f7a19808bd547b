import { findRoot } from '../../engine/numerics/index';
import { catenary } from '../../engine/physics/index';

/** The level pull (N) with which a line of a weight per length (N/m) sags by so much between level ends (m): that of the parabola w l²/(8 sag) or up to w·sag more. */
export function levelPullOfSag(span: number, sag: number, weight: number): number {
  const shallow = (weight * span * span) / (8 * sag);
  const sagAt = (pull: number): number => catenary(span, 0, pull, weight).sag - sag;
  return findRoot(sagAt, 0.999 * shallow, shallow + weight * sag).value;
}
