import { type AnyBlock, isLink } from '../../blocks/block';
import { inSentence, listed } from '../../sheet/called';
import type { BlockCell, Document, Variable } from '../../sheet/document';
import { freeId, freeName, takenNames } from '../../sheet/free-names';
import { keepingBaseline } from '../../sheet/keep-baseline';
import { openLive } from '../../sheet/live';
import { cellsOf, sheetOfPiece } from '../../sheet/sheets';
import type { Library } from '../../sheet/specs';
import { applyChanges, type Change } from '../../sheet/transaction';
import { settledNames } from '../make/index';
import { standIn } from '../place/index';
import { type Settled, settledTexts, variableOf } from './settled';
import { takeWeight } from './take-weight';
import type { PieceOffer, TakingAnswer } from './told';

/** Where an engine sits, which way it points and its tank are matters of the model that it comes into. */
const OF_THE_MODEL: ReadonlySet<string> = new Set([
  ...['station', 'offset_y', 'height', 'side_thrust', 'down_thrust'],
  ...['bearer_front', 'bearer_rear', 'bearer_gap', 'tank_volume'],
]);

interface Taken {
  readonly document: Document;
  readonly cell: BlockCell;
  readonly done: string;
}

/** The design with the engine, propeller or lines of another in the place of its own; as one piece more where it has none. */
export function takeRole(to: Document, from: Document, piece: PieceOffer, library: Library): TakingAnswer | undefined {
  const cell = cellsOf(from).find((each): each is BlockCell => each.kind === 'model' && each.name === piece.name);
  const block = library.blocks.find(({ kind }) => kind === cell?.of);
  if (!cell || !block || (block.role ?? block.kind) !== piece.of) return undefined;
  const settled = settledTexts(from, library);
  const turned = piece.of === 'engine' && turns(block) && !standIn(to, 'propeller', library.blocks);
  const its = turned ? standIn(from, 'propeller', library.blocks) : undefined;
  const along = its?.kind === 'model' ? added(to, its, blockOf(its, library), settled) : undefined;
  const into = along?.document ?? to;
  const there = standIn(into, piece.of, library.blocks);
  const taken =
    there?.kind === 'model' ? replaced(into, there, cell, settled, library) : added(into, cell, block, settled);
  const done = [taken.done, ...(along ? ['It turns the propeller that came with it.'] : [])].join(' ');
  const sheet = sheetOfPiece(taken.document, taken.cell.id)!.id;
  if (piece.of === 'lines') return { ok: true, document: taken.document, sheet, done };
  if (piece.of === 'propeller') {
    const weight = ' Its weight is a row of the parts: take or type that too.';
    return { ok: true, document: taken.document, sheet, done: done + weight };
  }
  const weighing = takeWeight({ document: taken.document, own: taken.cell }, { from, its: cell }, settled);
  return { ok: true, document: weighing.document, sheet, done: done + weighing.done };
}

const blockOf = (cell: BlockCell, { blocks }: Library): AnyBlock => blocks.find(({ kind }) => kind === cell.of)!;
const turns = (block: AnyBlock): boolean =>
  Object.values(block.fields).some((field) => isLink(field) && field.link === 'propeller');

/** Its own texts as numbers, without what it takes from other pieces. */
function ownTexts({ name, fields }: BlockCell, block: AnyBlock, settled: Settled): Record<string, string> {
  const own = Object.entries(fields).filter(([field]) => block.fields[field] && !isLink(block.fields[field]));
  const texts = own.map(([field, text]) => [field, settled.text(`${name}.${field}`, text)] as const);
  return Object.fromEntries(texts.filter(([, text]) => text !== ''));
}

function added(to: Document, piece: BlockCell, block: AnyBlock, settled: Settled): Taken {
  const fields = ownTexts(piece, block, settled);
  const cell = { ...piece, id: freeId(to), name: freeName(piece.name, takenNames(to)), fields };
  const model = cellsOf(to).find(({ kind }) => kind === 'model');
  const sheet = (model && sheetOfPiece(to, model.id)) ?? to.sheets[0]!;
  const change: Change = { change: 'insert', sheet: sheet.id, at: sheet.pieces.length, cell };
  const document = applyChanges(to, keepingBaseline(to, [change])).document;
  return {
    document,
    cell,
    done: `“${cell.title}” of “${settled.of}” stands on “${sheet.title}” now, its numbers as they are there.`,
  };
}

function replaced(to: Document, there: BlockCell, piece: BlockCell, settled: Settled, library: Library): Taken {
  const [was, is] = [blockOf(there, library), blockOf(piece, library)];
  const fields: Record<string, string> = {};
  const moved: { variable: Variable; text: string }[] = [];
  for (const [field, text] of Object.entries(ownTexts(piece, is, settled))) {
    const variable = was === is ? variableOf(to, there.fields[field]) : undefined;
    if (OF_THE_MODEL.has(field) && field in was.fields) continue;
    // A slide that sets it here goes on setting it.
    if (variable) moved.push({ variable, text });
    fields[field] = variable ? variable.name : text;
  }
  for (const [field, text] of Object.entries(there.fields)) {
    const spec = is.fields[field];
    if (spec && (isLink(spec) || OF_THE_MODEL.has(field))) fields[field] = text;
  }
  const cell = { ...there, of: piece.of, title: piece.title, fields };
  const others = was === is ? [] : settledNames(there, was, is, openLive(to, library), []).changes;
  const texts = moved.map(({ variable, text }): Change => ({ change: 'text', path: variable.name, text }));
  const changes: Change[] = [{ change: 'cell', cell }, ...others];
  const built = applyChanges(to, keepingBaseline(to, changes)).document;
  const set = moved.map(({ variable }) => inSentence(variable.title || variable.name));
  return {
    document: applyChanges(built, texts).document,
    cell,
    done: `“${piece.title}” of “${settled.of}” stands in the place of “${there.title}” now, its numbers as they are there.${set.length > 0 ? ` Set with it: ${listed(set)}.` : ''}`,
  };
}
