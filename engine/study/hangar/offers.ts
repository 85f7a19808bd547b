import type { Cell, Document } from '../../sheet/document';
import { openText } from '../../sheet/file';
import { openQuick } from '../../sheet/live';
import { cellsOf } from '../../sheet/sheets';
import type { Library } from '../../sheet/specs';
import { formatQuantity } from '../../units/index';
import { standIn } from '../place/index';
import type { PieceOffer } from './told';

/** Pieces of the model that stand in for a role, and what a builder calls them. */
const ROLES = [
  ['engine', 'engine or motor'],
  ['propeller', 'propeller'],
  ['lines', 'line set'],
] as const;

/** What another design can take from this one: engine, propeller, lines, sheets, parts. */
export function offersOf(text: string, library: Library): readonly PieceOffer[] | undefined {
  const opened = openText(text);
  if (!opened.ok) return undefined;
  const { document } = opened;
  const live = openQuick(document, library);
  const infos = new Map(live.compiled.names.map((info) => [info.path, info]));
  const massText = (path: string): string => {
    const info = infos.get(`${path}.mass`);
    const value = info ? live.state.m[info.slot]! : Number.NaN;
    return info && Number.isFinite(value) ? `part, ${formatQuantity(value, info.unit)}` : 'part';
  };
  return [
    ...ROLES.flatMap(([of, says]): PieceOffer[] => {
      const piece = standIn(document, of, library.blocks);
      return piece ? [{ of, name: piece.name, title: piece.title, says }] : [];
    }),
    ...document.sheets.map(({ id, title, pieces }): PieceOffer => {
      const count = pieces.length === 1 ? 'one piece' : `${pieces.length} pieces`;
      return { of: 'sheet', name: id, title: title || 'Untitled sheet', says: `sheet, ${count}` };
    }),
    ...partsIn(document).map(
      ({ path, title }): PieceOffer => ({ of: 'part', name: path, title, says: massText(path) }),
    ),
  ];
}

const partsIn = (document: Document) =>
  cellsOf(document)
    .filter((cell): cell is Extract<Cell, { kind: 'parts' }> => cell.kind === 'parts')
    .flatMap(({ name, rows }) => rows.map((row) => ({ path: `${name}.${row.name}`, title: row.title || row.name })));
