import { cgShiftByAdding } from '../../physics/index';
import type { BlockCell } from '../../sheet/document';
import type { Live } from '../../sheet/live';
import { cellsOf } from '../../sheet/sheets';
import type { Library } from '../../sheet/specs';
import { typedSlot } from '../run/axis';
import type { Culprit, Reconciliation } from './culprit';
import { forgottenIn } from './forgotten';
import type { ForgottenThing } from './forgotten-thing';

const NOTHING: Reconciliation = { state: 'unmeasured', differs: [], culprits: [] };
const MOST_CULPRITS = 3;
/** What takes less than this of what doesn't fit is no culprit. */
const LEAST_SHARE = 0.02;
/** Standard deviations beyond which a difference is one. */
const TELLING = 2;

/** What was found and what the table has: one of them for each thing that was measured. */
interface Compared {
  readonly what: Reconciliation['differs'][number];
  readonly found: number;
  readonly unsure: number;
  /** The table's with a thing besides; without one as it is. */
  tableWith(thing?: ForgottenThing): number;
}

/** Compares the CG that a piece has found with the table, and looks among what is often forgotten for what the table may lack. */
export function reconcile(live: Live, name: string, library: Library): Reconciliation {
  const { compiled, state } = live;
  const { document, program } = compiled;
  const cell = cellsOf(document).find(
    (each): each is BlockCell => each.kind === 'model' && each.of === 'found_cg' && each.name === name,
  );
  const at = (path: string): number => state.m[program.slotOf.get(path) ?? -1] ?? Number.NaN;
  if (!cell || Number.isNaN(at(`${name}.x`))) return NOTHING;
  const parts = cell.fields.parts ?? cellsOf(document).find(({ kind }) => kind === 'parts')?.name ?? '';
  const [mass, x, y] = ['mass', 'x', 'y'].map((what) => at(`${name}.table_${what}`)) as [number, number, number];
  const readingError = state.m[typedSlot(`${name}.reading_error`, program)]!;
  const all: readonly Compared[] = [
    {
      ...{ what: 'x', found: at(`${name}.x`), unsure: at(`${name}.unsure_x`) },
      tableWith: (thing) => (thing ? x + cgShiftByAdding(mass, x, thing.mass, thing.x) : x),
    },
    {
      ...{ what: 'y', found: at(`${name}.y`), unsure: Math.hypot(at(`${name}.y_error`), at(`${parts}.y_sd`)) },
      tableWith: (thing) => (thing ? y + cgShiftByAdding(mass, y, thing.mass, thing.y) : y),
    },
    {
      ...{ what: 'mass', found: at(`${name}.mass`), unsure: Math.hypot(readingError, at(`${parts}.mass_sd`)) },
      tableWith: (thing) => mass + (thing?.mass ?? 0),
    },
  ];
  const compared = all.filter(({ found, unsure }) => !Number.isNaN(found) && unsure > 0);
  const off = (thing?: ForgottenThing): readonly number[] =>
    compared.map(({ found, unsure, tableWith }) => (found - tableWith(thing)) / unsure);
  const before = misfit(off());
  const culprits = forgottenIn(live, parts, library)
    .filter((thing) => !Number.isNaN(thing.x))
    .map((thing): Culprit => {
      const leftX = all[0]!.found - all[0]!.tableWith(thing);
      return { thing, explains: before > 0 ? 1 - misfit(off(thing)) / before : 0, leftX };
    })
    .filter(({ explains }) => explains >= LEAST_SHARE)
    .toSorted((a, b) => b.explains - a.explains)
    .slice(0, MOST_CULPRITS);
  const far = off().map((each) => Math.abs(each) > TELLING);
  const differs = compared.flatMap(({ what }, k) => (far[k] ? what : []));
  return { state: differs.length > 0 ? 'differs' : 'agrees', differs, culprits };
}

const misfit = (off: readonly number[]): number => off.reduce((sum, each) => sum + each * each, 0);
