import { nonNegative } from './domain';

/** From where to where a rule or a person measures the length of the lines. */
export const LINE_MEASURES = ['grip_to_guide', 'grip_to_centreline', 'eyelet_to_eyelet'] as const;
export type LineMeasure = (typeof LINE_MEASURES)[number];

/** What stands between grip and guide beside the lines; all in m. */
export interface LineFittings {
  /** From the grip to the line connectors. */
  readonly handleCable: number;
  /** Length of all connectors, both ends together. */
  readonly connectors: number;
  /** Leadout that stands out of the guide. */
  readonly exposedLeadout: number;
  /** From the fuselage centreline to the guide. */
  readonly guideArm: number;
  /** Line used up in wraps and eyes, both ends together. */
  readonly wraps: number;
}

export interface LineMakeup {
  /** Grip to guide, m: the length that flies. */
  readonly flying: number;
  /** Grip to fuselage centreline, m: what most rules measure. */
  readonly toCentreline: number;
  /** Eyelet to eyelet, m. */
  readonly eyelets: number;
  /** What to cut from the reel, m. */
  readonly cut: number;
}

/**
 * Make-up of the lines: with e eyelet to eyelet, c handle cable, k connectors, x exposed leadout, a guide arm, w wraps,
 *
 *   flying f = c + k + e + x,  to centreline = f + a,  cut = e + w
 *
 * from whichever of f, f + a and e was measured. Confusing them is worth some 3 % of the radius. Geometry. A negative
 * eyelet length means that the fittings are longer than the length measured.
 */
export function lineMakeup(length: number, measure: LineMeasure, fittings: LineFittings): LineMakeup {
  const between =
    nonNegative('handle cable', fittings.handleCable) +
    nonNegative('connectors', fittings.connectors) +
    nonNegative('exposed leadout', fittings.exposedLeadout);
  const flying =
    nonNegative('line length', length) +
    (measure === 'eyelet_to_eyelet' ? between : measure === 'grip_to_centreline' ? -fittings.guideArm : 0);
  const eyelets = flying - between;
  return {
    flying,
    toCentreline: flying + fittings.guideArm,
    eyelets,
    cut: eyelets + nonNegative('wraps', fittings.wraps),
  };
}
