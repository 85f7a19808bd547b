import { withText } from '../../sheet/baseline';
import { capital, inSentence } from '../../sheet/called';
import type { Cell, Document, Variable, VariablesCell } from '../../sheet/document';
import { freeId, freeName, nameFromTitle, takenNames } from '../../sheet/free-names';
import type { Live } from '../../sheet/live';
import { textAt } from '../../sheet/paths';
import { cellsOf, withPiece, withPieces } from '../../sheet/sheets';
import { movedVariants } from '../../sheet/variants';
import type { NameInfo } from '../../terms/index';
import { differenceFromSI, toSI, writeQuantity } from '../../units/index';
import { slideIn } from '../place/index';
import type { MakingAnswer, MakingPlace } from './told';

/** How far a slide goes to either side: a share of the value. */
const SHARE = 0.25;

/** Makes a variable of what is typed at a path; what is typed there reads it from then on. What is one already stays as it is. */
export function makeVariable(path: string, live: Live, place: MakingPlace): MakingAnswer {
  const { document, names } = live.compiled;
  const info = names.find((each) => each.path === path);
  if (!info?.settable || info.options)
    return { ok: false, message: `${info?.title ?? path} is no number that is typed.` };
  if (info.kind === 'variable') return thereAlready(info.path, document);
  const title = titleOf(info, live);
  const name = freeName(nameFromTitle(title) || 'number', takenNames(document));
  const slid = slideIn({ ...PLAIN, title, symbol: info.symbol, least: leastWay(info, live) }, path, path, live, name);
  if (!slid) return { ok: false, message: `${title} has no value yet. Type one, and it can slide.` };
  if (slid.is === 'there') return thereAlready(slid.path, document);
  const variable =
    slid.is === 'made'
      ? slid.variable
      : variableOf(name, title, info, { text: textAt(document, path) ?? '', ends: slid.ends });
  const variants = movedVariants(document, new Map([[path, [name]]]));
  const reading = withText(document, path, name) ?? document;
  const put = putVariable(variants ? { ...reading, variants } : reading, variable, place);
  const { low, high } = variable;
  const says = `Makes a slide of ${inSentence(title)}: ${low} to ${high}, now ${variable.text}. It stands under “${put.piece.title}”.`;
  const done = `${capital(title)} slides now, from ${low} to ${high}, under “${put.piece.title}”.`;
  return { ok: true, document: put.document, path: name, cell: put.piece.id, says: [says], done };
}

const PLAIN = { as: '', of: '', share: SHARE, blank: '', unless: '', low: '', high: '' } as const;

function thereAlready(path: string, document: Document): MakingAnswer {
  const holder = cellsOf(document).find(
    (cell) => cell.kind === 'variables' && cell.rows.some((row) => row.name === path),
  );
  return { ok: true, document, path, cell: holder?.id ?? '', says: [], done: '' };
}

const variableOf = (
  name: string,
  title: string,
  { symbol, unit }: NameInfo,
  { text, ends: [low, high] }: { readonly text: string; readonly ends: readonly [string, string] },
): Variable => ({ name, title, symbol, unit, text, low, high, step: '' });

/** What a person calls it away from its piece: "Engine station"; with the piece where another piece has one of the same title. */
function titleOf({ title, cell, path }: NameInfo, { compiled: { document, names } }: Live): string {
  const same = names.filter((each) => each.title === title && each.settable && each.path !== path);
  if (same.length === 0) return title;
  const holder = cellsOf(document).find(({ id }) => id === cell);
  const row =
    holder?.kind === 'parts' ? holder.rows.find(({ name }) => path.startsWith(`${holder.name}.${name}.`)) : undefined;
  const of = row?.title || holder?.title || '';
  return of === '' || title.includes(of) ? title : `${of}, ${inSentence(title)}`;
}

/** A slide about nothing has some length too: a hundredth of the field's range, or one unit. */
function leastWay({ path, range, unit }: NameInfo, { compiled, state }: Live): string {
  const value = state.m[compiled.program.inputs.get(path) ?? -1];
  if (value !== 0) return '';
  const [least, most] = range ?? [0, 0];
  const shown = Math.abs(differenceFromSI(most - least, unit)) / 100;
  const size = Number.isFinite(shown) && shown > 0 ? Number(shown.toPrecision(1)) : 1;
  return writeQuantity(toSI(size, unit), unit);
}

/** Into the variables of the sheet where it is made, else into the first of the design, else into a piece of its own. */
function putVariable(document: Document, variable: Variable, place: MakingPlace) {
  const all = document.sheets.flatMap((sheet) => sheet.pieces.map((piece) => ({ sheet, piece })));
  const lists = all.filter((each): each is typeof each & { piece: VariablesCell } => each.piece.kind === 'variables');
  const list = (lists.find(({ sheet }) => sheet.id === place.sheet) ?? lists[0])?.piece;
  if (list) {
    const piece = { ...list, rows: [...list.rows, variable] };
    return { document: withPiece(document, piece), piece };
  }
  const piece: VariablesCell = {
    ...{ kind: 'variables', id: freeId(document), title: 'Set these', rows: [variable] },
    name: freeName('set_these', new Set([...takenNames(document), variable.name])),
  };
  return { document: putPieces(document, [piece], place), piece };
}

/** Puts pieces where they are to stand. */
export function putPieces(document: Document, pieces: readonly Cell[], { sheet: id, after }: MakingPlace): Document {
  const found = document.sheets.findIndex((sheet) => sheet.id === id);
  const at = found < 0 ? document.sheets.length - 1 : found;
  const there = document.sheets[at]!.pieces;
  const behind = there.findIndex((piece) => piece.id === after);
  return withPieces(document, at, there.toSpliced(behind < 0 ? there.length : behind + 1, 0, ...pieces));
}
