import type { Cell, Document, Part } from '../../sheet/document';
import { freeName } from '../../sheet/free-names';
import { keepingBaseline } from '../../sheet/keep-baseline';
import { cellsOf, sheetOfPiece } from '../../sheet/sheets';
import type { Library } from '../../sheet/specs';
import { applyChanges } from '../../sheet/transaction';
import { type Settled, settledTexts } from './settled';
import type { TakingAnswer } from './told';

type Parts = Extract<Cell, { kind: 'parts' }>;
const tablesOf = (document: Document): readonly Parts[] => cellsOf(document).filter((cell) => cell.kind === 'parts');

/** Of one part: what it is made of. */
const STUFF = ['material', 'stack'];
/** What a part keeps when its weight takes the place of what it is made of. */
const STAYS = new Set(['x', 'y', 'z', 'size_x', 'size_y', 'size_z', 'mass_tolerance', 'station_tolerance', 'weighed']);

/** The design with a part of another at the end of its first table of parts, its numbers as they are there. */
export function takePart(to: Document, from: Document, path: string, library: Library): TakingAnswer | undefined {
  const row = tablesOf(from)
    .flatMap((table) => table.rows.map((each) => ({ each, path: `${table.name}.${each.name}` })))
    .find((each) => each.path === path)?.each;
  if (!row) return undefined;
  const [table] = tablesOf(to);
  if (!table) {
    return { ok: false, message: 'This design has no table of parts. Add one by “Add a piece”, then take the part.' };
  }
  const settled = settledTexts(from, library);
  const known = STUFF.every((field) => isKnown(row.fields[field] ?? '', to, from, library));
  const part = known ? asMade(row, path, settled) : asWeight(row, path, settled);
  const name = freeName(row.name, new Set(table.rows.map((each) => each.name)));
  const cell = { ...table, rows: [...table.rows, { ...part, name }] };
  const document = applyChanges(to, keepingBaseline(to, [{ change: 'cell', cell }])).document;
  const what = known ? '' : ' What it is made of is not in this design, so it came as a weight.';
  return {
    ok: true,
    document,
    sheet: sheetOfPiece(to, table.id)!.id,
    done: `“${row.title || row.name}” of “${settled.of}” stands at the end of “${table.title}” now, its numbers as they are there.${what}`,
  };
}

function asMade(row: Part, path: string, settled: Settled): Part {
  const texts = Object.entries(row.fields).map(([field, text]) => [
    field,
    STUFF.includes(field) ? text : settled.text(`${path}.${field}`, text),
  ]);
  return { ...row, fields: Object.fromEntries(texts) };
}

function asWeight({ weighed_as: _, ...row }: Part, path: string, settled: Settled): Part {
  const kept = Object.entries(row.fields).filter(([field]) => STAYS.has(field));
  const texts = kept.map(([field, text]) => [field, settled.text(`${path}.${field}`, text)]);
  return { ...row, shape: 'point', fields: { ...Object.fromEntries(texts), mass: settled.value(`${path}.mass`) } };
}

/** Whether a material or a choice is in the other design just so. */
function isKnown(text: string, to: Document, from: Document, library: Library): boolean {
  const name = text.trim().split('.', 1)[0]!;
  if (name === '') return true;
  const [own, its] = [from, to].map(
    (document) =>
      document.rows.find((each) => each.name === name) ??
      cellsOf(document).find((cell) => cell.kind === 'choice' && cell.name === name),
  );
  const inLibrary = library.tables.some(({ rows }) => rows.some((each) => each.name === name));
  if (own) return its !== undefined && sayingOf(own) === sayingOf(its);
  return inLibrary && its === undefined;
}

/** All that a row or a choice says, whatever its id is and which option is picked. */
const sayingOf = (thing: object): string => JSON.stringify({ ...thing, id: '', text: '', picked: '', folded: false });
