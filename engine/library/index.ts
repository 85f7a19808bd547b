export { bladeShapes, type LibraryBladeShape } from './blade-shapes';
export { type Finish, finishes } from './finishes';
export { type LibraryMaterial, materials } from './materials';
export { type PropellerAgreement, propellerAgreement } from './propeller-agreement';
export { SECTION_FAMILIES, type Section, type SectionFamily, sections, sectionsOf } from './sections';
export type { Sourced } from './table';
