import { type LibraryTable, libraryOf } from '../library-table';
import { classRules } from './class-rules';
import { engines } from './engines';
import { finishes } from './finishes';
import { lineKinds } from './line-kinds';
import { materials } from './materials';
import { motors } from './motors';
import { packs } from './packs';
import { propellers } from './propellers';
import { sectionPoints } from './section-points';
import { sectionRows } from './sections';
import { smallParts } from './small-parts';
import { stock } from './stock';
import { tubes } from './tubes';
import { wire } from './wire';

/** Every table, once. A new one is added here and nowhere else in this folder. */
export const tables: readonly LibraryTable[] = libraryOf<LibraryTable>([
  materials,
  finishes,
  lineKinds,
  wire,
  tubes,
  smallParts,
  stock,
  classRules,
  engines,
  motors,
  packs,
  propellers,
  sectionRows,
  sectionPoints,
]);
