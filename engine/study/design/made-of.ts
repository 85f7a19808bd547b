import type { Document, Part } from '../../sheet/document';
import type { Live } from '../../sheet/live';
import { cellsOf } from '../../sheet/sheets';
import { typedSlot } from '../run/axis';
import { fillTogether } from '../run/fill';
import { planCore } from '../run/plan';
import { startRunner } from '../run/runner';

/**
 * Mass of all parts that are made of what a choice picks, for each of its options in order, kg: the design as it stands but for this
 * choice. Empty where no part is made of it.
 */
export function massesMadeOf({ compiled, state }: Live, choice: string): readonly number[] {
  const { document, program } = compiled;
  const cell = cellsOf(document).find((each) => each.kind === 'choice' && each.name === choice);
  const wanted = partsMadeOf(document, choice).filter((path) => program.slotOf.has(path));
  if (cell?.kind !== 'choice' || wanted.length === 0 || !program.slotOf.has(choice)) return [];
  const options = Float64Array.from(cell.options.keys());
  const axes = [{ path: choice, slot: typedSlot(choice, program), values: options, choice: true }];
  const start = { revision: 0, name: `made of ${choice}`, values: state.m, why: state.why };
  const plan = { kind: 'made of', ...planCore(program, start, axes, wanted), axes, key: '' };
  const runner = startRunner(compiled, plan, fillTogether(plan));
  const { columns } = runner.run(Uint32Array.from(cell.options.keys()));
  runner.finish();
  return cell.options.map((_, k) => columns.reduce((sum, column) => sum + column[k]!, 0));
}

/** Paths of the masses of the parts whose stack or material is the choice itself, whatever it picks. */
function partsMadeOf(document: Document, choice: string): readonly string[] {
  const isMade = ({ fields }: Part): boolean => fields.stack?.trim() === choice || fields.material?.trim() === choice;
  return cellsOf(document).flatMap((cell) =>
    cell.kind === 'parts' ? cell.rows.filter(isMade).map((row) => `${cell.name}.${row.name}.mass`) : [],
  );
}
