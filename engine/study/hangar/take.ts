import { copyingSheet } from '../../sheet/copy-sheet';
import type { Document } from '../../sheet/document';
import { openText } from '../../sheet/file';
import type { Library } from '../../sheet/specs';
import { applyChanges } from '../../sheet/transaction';
import { describeBlock } from '../describe/blocks';
import { takePart } from './take-part';
import { takeRole } from './take-role';
import type { PieceOffer, TakingAnswer } from './told';

const GONE: TakingAnswer = { ok: false, message: 'That design has no such piece any more. Nothing was taken.' };

/** The open design with a piece of another one in it. */
export function takePiece(to: Document, text: string, piece: PieceOffer, library: Library): TakingAnswer {
  const opened = openText(text);
  if (!opened.ok) return { ok: false, message: `${opened.message} Nothing was taken.` };
  const from = opened.document;
  if (piece.of === 'part') return takePart(to, from, piece.name, library) ?? GONE;
  return (piece.of === 'sheet' ? takeSheet(to, from, piece, library) : takeRole(to, from, piece, library)) ?? GONE;
}

function takeSheet(
  to: Document,
  from: Document,
  { name, title }: PieceOffer,
  { blocks }: Library,
): TakingAnswer | undefined {
  if (!from.sheets.some(({ id }) => id === name)) return undefined;
  const document = applyChanges(to, copyingSheet(to, from, name, blocks.map(describeBlock))).document;
  const done = `The sheet “${title}” stands behind the others now. What it says of the rest reads what has the name here.`;
  return { ok: true, document, sheet: document.sheets.at(-1)!.id, done };
}
