import type { PartsCell } from '../../../engine/index';
import type { Sheet } from '../../store/sheet';

/** Names within a table that a new part can't have: those of its parts, and of its totals. */
export function takenNames(sheet: Sheet, cell: PartsCell): ReadonlySet<string> {
  const within = `${cell.name}.`;
  const taken = new Set(cell.rows.map((row) => row.name));
  for (const path of sheet.names.peek().keys()) {
    if (path.startsWith(within)) taken.add(path.slice(within.length).split('.')[0]!);
  }
  return taken;
}
