export { bladeShapes, type LibraryBladeShape } from './blade-shapes';
export { type OftenForgotten, oftenForgotten } from './forgotten';
export {
  type Column,
  isOptionColumn,
  isWordColumn,
  type LibraryRow,
  type LibraryTable,
  type TableTold,
} from './library-table';
export { type PropellerAgreement, propellerAgreement } from './propeller-agreement';
export { type SmoothSection, smoothSections } from './section-points';
export { type Section, type SectionFamily, sections, sectionsOf } from './sections';
export type { Sourced } from './table';
export { FUEL_KINDS } from './tables/engines';
export { tables } from './tables/index';
export { LINE_MAKES } from './tables/line-kinds';
export { SECTION_FAMILIES } from './tables/sections';
export { musicWireRows, ratedLoads } from './wire-rows';
