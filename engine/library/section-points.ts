import { sectionPoints } from './tables/section-points';

/** One row of a symmetrical section with a smooth surface; NaN where the source says nothing. */
export interface SmoothSection {
  readonly thickness: number;
  readonly reynolds: number;
  /** Drag coefficient at no lift. */
  readonly drag: number;
  /** Drag coefficient over the square of the lift coefficient, between 0° and 4°. */
  readonly growth: number;
  readonly liftLimit: number;
}

/** Lift slope that the source gives every section from Re 160 000 up, 1/rad: for the rows of which no lift table was read. */
const NOMINAL_SLOPE = (0.11 * 180) / Math.PI;
const FOUR_DEGREES = Math.PI / 45;

/** Smooth sections by Reynolds number, as the wing block computes with them. */
export const smoothSections: readonly SmoothSection[] = sectionPoints.rows
  .filter(({ words }) => words.surface === 'smooth')
  .map(({ values }) => {
    const slope = Number.isNaN(values.slope!) ? NOMINAL_SLOPE : values.slope!;
    return {
      thickness: values.thickness!,
      reynolds: values.reynolds!,
      drag: values.drag_0!,
      growth: (values.drag_4! - values.drag_0!) / (slope * FOUR_DEGREES) ** 2,
      liftLimit: values.lift_limit!,
    };
  });
