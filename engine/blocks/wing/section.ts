import { type SectionFamily, sectionsOf, smoothSections } from '../../library/index';
import {
  dragGrowth,
  powerOfReynolds,
  type SectionFacts,
  sectionAt,
  sectionCurves,
  smoothDrag,
  smoothLiftLimit,
  THIN_STALL,
} from '../../physics/index';

/** A section at the Reynolds number of a model, smooth. */
export interface ModelSection extends SectionFacts {
  /** n and p in c_d0 ∝ Re^n and c_l,max ∝ Re^p near that Reynolds number. */
  readonly dragPower: number;
  readonly liftPower: number;
  /** k_v in c_d = c_d0 + k_v (c_l − c_l,i)². */
  readonly growth: number;
}

const curves = sectionCurves(smoothSections);

/**
 * A section of a family, of any thickness, at a Reynolds number. Drag and greatest lift are those of a symmetrical section measured at low
 * Reynolds numbers, times what camber, and a nose thinner than 12 %, change in them at full size: measurements of cambered sections at
 * low Reynolds numbers are not in the library. `drag` is the least one.
 */
export function modelSection(family: SectionFamily, thickness: number, reynolds: number): ModelSection {
  const facts = sectionAt(sectionsOf(family), thickness);
  const symmetrical = sectionsOf('symmetrical');
  // Both at a thickness of which the family has rows, so that the ratio is that of camber alone.
  const known = sectionsOf(family);
  const alike = Math.min(Math.max(thickness, known[0]!.thickness), known.at(-1)!.thickness);
  const plain = sectionAt(symmetrical, alike);
  const nose =
    sectionAt(symmetrical, Math.min(thickness, THIN_STALL)).liftLimit / sectionAt(symmetrical, THIN_STALL).liftLimit;
  const drag = (re: number): number => smoothDrag(curves, thickness, re);
  const lift = (re: number): number => smoothLiftLimit(curves, thickness, re);
  return {
    ...facts,
    drag: (drag(reynolds) * facts.drag) / plain.drag,
    liftLimit: (lift(reynolds) * nose * facts.liftLimit) / plain.liftLimit,
    growth: dragGrowth(curves, thickness, reynolds),
    dragPower: powerOfReynolds(drag, reynolds),
    liftPower: powerOfReynolds(lift, reynolds),
  };
}
