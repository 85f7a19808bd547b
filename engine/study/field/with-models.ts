import type { BlockCell, Document } from '../../sheet/document';
import { freeIds, takenNames } from '../../sheet/free-names';
import { editLive, type Live } from '../../sheet/live';
import type { Library } from '../../sheet/specs';
import { linkedRoles, newModel, standIn } from '../place/index';

/**
 * The design with a piece of the model for each of these roles that it lacks, as a study would add them, everything in them as it is
 * estimated. The open design stays as it is. Roles of weight and wing are never made up: they are the design.
 */
export function withModels(live: Live, roles: readonly string[], library: Library): Live {
  const { document } = live.compiled;
  const added: BlockCell[] = [];
  const taken = new Set(takenNames(document));
  const id = freeIds(document);
  const add = (role: string): void => {
    const known = added.some(
      (piece) => library.blocks.find(({ kind }) => kind === piece.of)?.role === role || piece.of === role,
    );
    if (known || standIn(document, role, library.blocks)) return;
    for (const other of linkedRoles(role, library.blocks)) add(other);
    const piece = newModel(role, library.blocks, { id: id(), taken, fields: {}, isOpen: false });
    taken.add(piece.name);
    added.push(piece);
  };
  for (const role of roles) add(role);
  return added.length === 0 ? live : editLive(live, withPieces(document, added), library).live;
}

const withPieces = (document: Document, added: readonly BlockCell[]): Document => ({
  ...document,
  sheets: document.sheets.map((sheet, k) => (k === 0 ? { ...sheet, pieces: [...sheet.pieces, ...added] } : sheet)),
});
