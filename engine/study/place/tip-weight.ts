import { inSentence } from '../../sheet/called';
import { massIsTyped } from '../../sheet/cells/part-fields';
import type { Document } from '../../sheet/document';
import type { Live } from '../../sheet/live';
import { cellsOf } from '../../sheet/sheets';
import type { Meant } from './names';

/** The part that is tip weight: called so, else the point that lies farthest outboard; undefined where no part is outboard. */
export function tipWeightIn(document: Document, { compiled, state }: Live): Meant | undefined {
  const { slotOf } = compiled.program;
  const parts = cellsOf(document)
    .flatMap((cell) =>
      cell.kind === 'parts' ? cell.rows.map((row) => ({ row, path: `${cell.name}.${row.name}` })) : [],
    )
    .filter(({ row }) => massIsTyped(row) && !row.fuel)
    .map(({ row, path }) => ({ row, path, y: state.m[slotOf.get(`${path}.y`) ?? -1] ?? Number.NaN }))
    .filter(({ y }) => y > 0)
    .sort((a, b) => b.y - a.y);
  const tip = parts.find(({ row }) => /tip weight/i.test(row.title)) ?? parts[0];
  return tip && { path: tip.path, title: inSentence(tip.row.title) };
}
