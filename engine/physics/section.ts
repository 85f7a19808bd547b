import { finite } from './domain';

/** What a wing section does, at one thickness. Slope per rad, angles in rad, coefficients on the chord. */
export interface SectionFacts {
  /** Thickness over chord. */
  readonly thickness: number;
  /** a_0, 1/rad. */
  readonly slope: number;
  /** α_L0, rad; negative for a cambered section. */
  readonly zeroLiftAngle: number;
  /** c_m about the aerodynamic centre, nose-up positive. */
  readonly moment: number;
  /** Least drag coefficient at the Reynolds number of the source. */
  readonly drag: number;
  /** Greatest lift coefficient at the Reynolds number of the source. */
  readonly liftLimit: number;
  /** c_l at which drag is least; 0 for a symmetrical section. */
  readonly leastDragLift: number;
}

/**
 * Section facts at a thickness, straight between the rows of one family (ascending thickness); beyond the first or last row
 * that row is held. Derivation: linear interpolation.
 */
export function sectionAt(rows: readonly SectionFacts[], thickness: number): SectionFacts {
  const t = finite('thickness over chord', thickness);
  const first = rows[0];
  if (!first) throw new RangeError('rows is empty; it must hold one section or more');
  let low = first;
  for (const high of rows) {
    if (high.thickness >= t) {
      const f =
        high.thickness === low.thickness ? 0 : Math.max(0, (t - low.thickness) / (high.thickness - low.thickness));
      const between = (a: number, b: number): number => a + f * (b - a);
      return {
        thickness: t,
        slope: between(low.slope, high.slope),
        zeroLiftAngle: between(low.zeroLiftAngle, high.zeroLiftAngle),
        moment: between(low.moment, high.moment),
        drag: between(low.drag, high.drag),
        liftLimit: between(low.liftLimit, high.liftLimit),
        leastDragLift: between(low.leastDragLift, high.leastDragLift),
      };
    }
    low = high;
  }
  return { ...low, thickness: t };
}

/**
 * C_L,max = 0.9 c_l,max: greatest lift of an unswept wing of moderate aspect ratio against its section's.
 * Source: D. P. Raymer, Aircraft Design: A Conceptual Approach, ch. 12 (from memory).
 */
export const WING_SHARE_OF_SECTION_LIFT = 0.9;
