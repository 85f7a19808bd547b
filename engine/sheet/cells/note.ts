import * as v from 'valibot';
import type { NoteCell } from '../document';
import { baseEntries } from './entries';
import type { CellKindOf } from './kind';
import { plain } from './plain';

/** Words for the reader. */
export const noteCell: CellKindOf<NoteCell> = {
  ...plain<NoteCell>(),
  kind: 'note',
  schema: v.strictObject({ ...baseEntries('note'), text: v.string() }),
};
