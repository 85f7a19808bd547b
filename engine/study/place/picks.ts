import type { ChoiceCell, PartsCell } from '../../sheet/document';
import type { Live } from '../../sheet/live';
import { cellsOf } from '../../sheet/sheets';
import type { Pick } from './study';

/** Choices of a design that a study may compare by, the likeliest first. */
export function picksIn(pick: Pick, live: Live): readonly ChoiceCell[] {
  const cells = cellsOf(live.compiled.document);
  const choices = cells.filter((cell) => cell.kind === 'choice');
  if (pick.of === 'any') return choices;
  const tables = cells.filter((cell) => cell.kind === 'parts');
  return choices
    .map((choice) => ({ choice, moment: momentOf(choice, tables, live) }))
    .filter(({ moment }) => !Number.isNaN(moment))
    .sort((a, b) => b.moment - a.moment)
    .map(({ choice }) => choice);
}

/** Mass times station of all parts that are made of it, kg·m: what a change of it does to the balance. NaN where none is. */
function momentOf(choice: ChoiceCell, tables: readonly PartsCell[], { compiled, state }: Live): number {
  const { slotOf } = compiled.program;
  const at = (path: string): number => state.m[slotOf.get(path) ?? -1] ?? Number.NaN;
  const made = tables.flatMap(({ name, rows }) =>
    rows
      .filter(({ fields }) => [fields.stack, fields.material].some((text) => text?.trim() === choice.name))
      .map((row) => at(`${name}.${row.name}.mass`) * at(`${name}.${row.name}.x`)),
  );
  return made.length === 0 ? Number.NaN : made.reduce((sum, each) => sum + each, 0);
}
