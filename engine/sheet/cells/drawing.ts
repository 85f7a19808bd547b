import * as v from 'valibot';
import type { DrawingCell } from '../document';
import { baseEntries } from './entries';
import type { CellKindOf } from './kind';
import { plain } from './plain';

/** The scale drawing: what it shows comes from the blocks and from the tables of parts. */
export const drawingCell: CellKindOf<DrawingCell> = {
  ...plain<DrawingCell>(),
  kind: 'drawing',
  schema: v.strictObject({ ...baseEntries('drawing'), parts: v.exactOptional(v.boolean()) }),
};
