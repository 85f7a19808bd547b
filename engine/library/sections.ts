import type { LibraryRow } from './library-table';
import type { Sourced } from './table';
import { SECTION_FAMILIES, sectionRows } from './tables/sections';

export type SectionFamily = (typeof SECTION_FAMILIES)[number];

/** A wing section: what it does at the Reynolds number of its source. */
export interface Section extends Sourced {
  readonly family: SectionFamily;
  /** Thickness over chord. */
  readonly thickness: number;
  /** Section lift slope, 1/rad. */
  readonly slope: number;
  /** Angle of zero lift, rad; negative for a cambered section. */
  readonly zeroLiftAngle: number;
  /** Moment coefficient about the aerodynamic centre, nose-up positive. */
  readonly moment: number;
  /** Least drag coefficient. */
  readonly drag: number;
  /** Greatest lift coefficient. */
  readonly liftLimit: number;
  /** Lift coefficient at which drag is least. */
  readonly leastDragLift: number;
}

function sectionOf({ values, words, ...sourced }: LibraryRow): Section {
  return {
    ...sourced,
    family: words.family as SectionFamily,
    thickness: values.thickness!,
    slope: values.slope!,
    zeroLiftAngle: values.zero_lift_angle!,
    moment: values.moment!,
    drag: values.drag!,
    liftLimit: values.lift_limit!,
    leastDragLift: values.least_drag_lift!,
  };
}

export const sections: readonly Section[] = sectionRows.rows.map(sectionOf);

/** Sections of one family, thin to thick. */
const byFamily = new Map(
  SECTION_FAMILIES.map((family) => [
    family,
    sections.filter((section) => section.family === family).sort((a, b) => a.thickness - b.thickness),
  ]),
);

export function sectionsOf(family: SectionFamily): readonly Section[] {
  return byFamily.get(family)!;
}
