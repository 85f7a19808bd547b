import { kindOf } from './cells/index';
import type { Cell, Document, OwnRow, Sheet } from './document';
import { freeId, freeName, takenNames } from './free-names';
import { type BlockLinks, keptLinks, roleOf } from './links';
import { rename } from './rename';
import { cellsOf, freeSheetId, sheetWith } from './sheets';
import { applyChanges, type Change } from './transaction';
import { usesOf } from './uses';

/**
 * The edits that put a copy of a sheet of one design behind the sheets of another, which may be the same. Names that are taken
 * there are freed, and what the sheet says of itself it says of the copy; what it says of the rest reads what has the name
 * there. Own rows of the library that it uses come with it. Where two of a role come together, links name the one that is meant.
 */
export function copyingSheet(
  to: Document,
  from: Document,
  id: string,
  blocks: readonly BlockLinks[],
): readonly Change[] {
  const sheet = sheetWith(from, id);
  if (!sheet) throw new RangeError(`There is no sheet with id ${id}`);
  const pieces = sheet.pieces.map((piece) => withOwnLinks(piece, sheet, from, to, blocks));
  const whole: Document = {
    ...{ ...from, sheets: [{ ...sheet, pieces }], figures: [] },
    ...{ baseline: undefined, baseline_design: undefined, variants: undefined },
  };
  const alone = withFreeNames({ ...whole, rows: rowsFor(whole, to) }, to);
  return puttingIn(to, alone, blocks);
}

/** Own rows that the sheet uses and the other design has not just so. */
const rowsFor = (alone: Document, to: Document): readonly OwnRow[] =>
  alone.rows.filter(
    (row) =>
      usesOf(alone, row.name).length > 0 && !to.rows.some((each) => JSON.stringify(each) === JSON.stringify(row)),
  );

/** A block that takes from the only one of its role goes on taking from it where it comes along and is not the only one any more. */
function withOwnLinks(piece: Cell, sheet: Sheet, from: Document, to: Document, blocks: readonly BlockLinks[]): Cell {
  if (piece.kind !== 'model') return piece;
  let { fields } = piece;
  for (const link of blocks.find((block) => block.kind === piece.of)?.fields ?? []) {
    if (link.kind !== 'link' || link.name in fields) continue;
    const ofRole = (cell: Cell): boolean => roleOf(cell, blocks) === link.role;
    const [only, ...others] = cellsOf(from).filter(ofRole);
    const comes = only && others.length === 0 && sheet.pieces.includes(only);
    if (comes && cellsOf(to).some(ofRole)) fields = { ...fields, [link.name]: only.name };
  }
  return { ...piece, fields };
}

function withFreeNames(alone: Document, to: Document): Document {
  const taken = takenNames(to);
  const own = [...cellsOf(alone).flatMap((cell) => kindOf(cell).owns(cell)), ...alone.rows.map((row) => row.name)];
  const used = new Set([...taken, ...own]);
  return own
    .filter((path) => !path.includes('.') && taken.has(path))
    .reduce((now, path) => {
      const name = freeName(path, used);
      used.add(name);
      const renamed = rename(now, path, name);
      if (!renamed.ok) throw new Error(renamed.message);
      return applyChanges(now, renamed.changes).document;
    }, alone);
}

function puttingIn(to: Document, alone: Document, blocks: readonly BlockLinks[]): readonly Change[] {
  const [sheet] = alone.sheets as readonly [Sheet];
  const pieces: Cell[] = [];
  const changes: Change[] = [];
  // One after another, as if each were put in by hand: ids follow each other, and the second of a role is noticed.
  let now = applyChanges(to, [{ change: 'insert_sheet', at: to.sheets.length, sheet: empty(to) }]).document;
  for (const each of sheet.pieces) {
    const piece = { ...each, id: freeId(now) };
    const links = keptLinks(to, piece, blocks);
    changes.push(...links.filter((link) => !changes.some((done) => JSON.stringify(done) === JSON.stringify(link))));
    pieces.push(piece);
    now = applyChanges(now, [{ change: 'insert', sheet: now.sheets.at(-1)!.id, at: 0, cell: piece }]).document;
  }
  const title = to.sheets.some((other) => other.title === sheet.title) ? `${sheet.title}, copy` : sheet.title;
  const copy: Sheet = { ...empty(to), title, pieces };
  if (alone.rows.length > 0) changes.push({ change: 'head', head: { rows: [...to.rows, ...alone.rows] } });
  return [...merged(to, changes), { change: 'insert_sheet', at: to.sheets.length, sheet: copy }];
}

const empty = (to: Document): Sheet => ({ id: freeSheetId(to), title: '', pieces: [] });

/** Several new states of one block, each with a link of its own, as one state with all of them. */
function merged(to: Document, changes: readonly Change[]): readonly Change[] {
  const blocks = new Map<string, Cell>();
  const others: Change[] = [];
  for (const change of changes) {
    if (change.change !== 'cell' || change.cell.kind !== 'model') {
      others.push(change);
      continue;
    }
    const before = blocks.get(change.cell.id) ?? cellsOf(to).find((cell) => cell.id === change.cell.id);
    const fields = before?.kind === 'model' ? { ...before.fields, ...change.cell.fields } : change.cell.fields;
    blocks.set(change.cell.id, { ...change.cell, fields });
  }
  return [...others, ...[...blocks.values()].map((cell): Change => ({ change: 'cell', cell }))];
}
