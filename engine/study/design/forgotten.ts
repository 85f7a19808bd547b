import { renameInFormula } from '../../formula/index';
import { type OftenForgotten, oftenForgotten } from '../../library/index';
import { cgShiftByAdding } from '../../physics/index';
import type { Document, Part, PartsCell } from '../../sheet/document';
import { editLive, type Live } from '../../sheet/live';
import { cellsOf, withPiece } from '../../sheet/sheets';
import type { Library } from '../../sheet/specs';
import type { ForgottenThing } from './forgotten-thing';

/** What a parts cell lacks of the things that are often forgotten, each with what it would do to the CG of this design. */
export function forgottenIn(live: Live, parts: string, library: Library): readonly ForgottenThing[] {
  const { document } = live.compiled;
  const cell = cellsOf(document).find((each) => each.kind === 'parts' && each.name === parts);
  if (cell?.kind !== 'parts') return [];
  const things = missing(cell);
  const roles = rolesOf(document, library);
  const tried = things.map((thing, k) => weightless(thing, `${TRIED}${k}`, roles));
  const placed = editLive(live, withRows(document, cell, tried), library).live;
  const at = (path: string): number => valueAt(placed, path);
  const [mass, x, y] = ['mass', 'x', 'y'].map((name) => valueAt(live, `${parts}.${name}`)) as [number, number, number];
  return things.map((thing, k) => {
    const path = `${parts}.${tried[k]!.name}`;
    const place = { x: at(`${path}.x`), y: at(`${path}.y`), z: at(`${path}.z`) };
    const known = Object.values(place).every((value) => !Number.isNaN(value));
    return {
      part: {
        name: thing.name,
        title: thing.title,
        shape: 'point',
        // A place that this design doesn't say is left to be typed; a formula at fault would stop the whole table.
        fields: { ...(known ? tried[k]!.fields : { x: '0 mm' }), mass: thing.massText },
      },
      about: thing.about,
      source: thing.source,
      memory: thing.memory,
      mass: thing.mass,
      x: known ? place.x : Number.NaN,
      y: known ? place.y : Number.NaN,
      shiftX: known ? cgShiftByAdding(mass, x, thing.mass, place.x) : Number.NaN,
      shiftY: known ? cgShiftByAdding(mass, y, thing.mass, place.y) : Number.NaN,
    };
  });
}

/** Begins the names of parts that are only tried; a name with two underscores in it is nobody's. */
const TRIED = 'tried__';

function missing(cell: PartsCell): readonly OftenForgotten[] {
  const titles = cell.rows.map((row) => row.title.toLowerCase());
  const said = (words: readonly string[]): boolean =>
    words.some((word) => titles.some((title) => title.includes(word)));
  const names = new Set(cell.rows.map((row) => row.name));
  return oftenForgotten.filter(
    ({ name, saidBy, beside }) => !names.has(name) && !said(saidBy) && (beside.length === 0 || said(beside)),
  );
}

/** Name of the first block of each role. */
function rolesOf(document: Document, { blocks }: Library): ReadonlyMap<string, string> {
  const roles = new Map<string, string>();
  for (const cell of cellsOf(document)) {
    if (cell.kind !== 'model') continue;
    const block = blocks.find((each) => each.kind === cell.of);
    const role = block?.role ?? cell.of;
    if (!roles.has(role)) roles.set(role, cell.name);
  }
  return roles;
}

/** The thing as a part without mass, so that trying where it would be changes nothing else. */
function weightless({ title, place }: OftenForgotten, name: string, roles: ReadonlyMap<string, string>): Part {
  const spoken = (text: string): string =>
    [...roles].reduce((said, [role, cell]) => (role === cell ? said : renameInFormula(said, role, cell)), text);
  return {
    name,
    title,
    shape: 'point',
    fields: { mass: '0 g', x: spoken(place.x), y: spoken(place.y), z: spoken(place.z) },
  };
}

const withRows = (document: Document, cell: PartsCell, rows: readonly Part[]): Document =>
  withPiece(document, { ...cell, rows: [...cell.rows, ...rows] });

function valueAt({ compiled, state }: Live, path: string): number {
  const slot = compiled.program.slotOf.get(path);
  return slot === undefined ? Number.NaN : state.m[slot]!;
}
