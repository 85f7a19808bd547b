export { bladeShapes } from './blade-shapes';
export { type OftenForgotten, oftenForgotten } from './forgotten';
export {
  type Column,
  isOptionColumn,
  isWordColumn,
  type LibraryRow,
  type LibraryTable,
} from './library-table';
export { propellerAgreement } from './propeller-agreement';
export { type SmoothSection, smoothSections } from './section-points';
export { type SectionFamily, sections, sectionsOf } from './sections';

export { FUEL_KINDS } from './tables/engines';
export { tables } from './tables/index';
export { LINE_MAKES } from './tables/line-kinds';
export { SECTION_FAMILIES } from './tables/sections';
export { musicWireRows, ratedLoads } from './wire-rows';
