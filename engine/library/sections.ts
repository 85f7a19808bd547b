import text from '../../data/sections.csv?raw';
import { ONE } from '../units/index';
import { readTable, type Sourced } from './table';

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
  /** Reynolds number of the source, as printed there. */
  readonly reynolds: string;
}

/** Section pictures a builder picks from, each a family of sections of rising thickness. */
export const SECTION_FAMILIES = ['symmetrical', 'cambered 2 %', 'cambered 4 %'] as const;
export type SectionFamily = (typeof SECTION_FAMILIES)[number];

export const readSections = (file: string, content: string): Section[] =>
  readTable(file, content, (row) => {
    const family = SECTION_FAMILIES.find((known) => known === row.text('family'));
    if (!family) {
      throw new RangeError(`family is "${row.text('family')}"; it must be one of ${SECTION_FAMILIES.join(', ')}`);
    }
    return {
      name: row.name,
      title: row.title,
      family,
      thickness: row.quantity('thickness', ONE),
      slope: row.quantity('slope', ONE),
      zeroLiftAngle: row.quantity('zero_lift_angle', ONE),
      moment: row.quantity('moment', ONE),
      drag: row.quantity('drag', ONE),
      liftLimit: row.quantity('lift_limit', ONE),
      reynolds: row.text('reynolds'),
      source: row.source,
      memory: row.memory,
    };
  });

export const sections: readonly Section[] = readSections('sections.csv', text);

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
