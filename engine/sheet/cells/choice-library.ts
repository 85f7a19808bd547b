import type { ChoiceCell, ChoiceOption } from '../document';
import { named } from '../named';
import type { Slot } from '../program';
import type { Builder, ValueSpec } from '../specs';
import { choiceStep } from '../steps/choice';

/** Lays the numbers of a choice among the rows of one table: each column under the name of the choice. */
export function layLibraryChoice(
  cell: ChoiceCell,
  options: readonly ChoiceOption[],
  picked: Slot,
  builder: Builder,
): void {
  const table = builder.tables.get(cell.table ?? '');
  if (!table) {
    const known = [...builder.tables.keys()];
    const message = `${named(cell.name)} is a choice among rows of “${cell.table ?? ''}”: the library has no such table. Its tables are ${known.join(', ')}.${builder.meant(cell.table ?? '', known)}`;
    builder.fault({ cell: cell.id, path: cell.name, message });
    return;
  }
  const columns = builder.columns(table.name).flatMap(({ name, ...told }): ValueSpec[] => {
    const path = `${cell.name}.${name}`;
    if (!builder.claim(path, cell.id)) return [];
    const value: ValueSpec = { ...told, cell: cell.id, path, slot: builder.slots(path), kind: 'choice' };
    builder.value(value);
    return [value];
  });
  const writes = columns.map((column) => column.slot);
  builder.later(() => {
    const numbers = options.map(({ name }) => {
      const numberOf = ({ path }: ValueSpec): Slot => builder.find(name + path.slice(cell.name.length))!.slot;
      return builder.rows(table.name).includes(name) ? columns.map(numberOf) : layStrange(cell, name, columns, builder);
    });
    const names = options.map((option) => option.name);
    builder.step(choiceStep({ cell: cell.id, path: cell.name, picked, names, numbers, writes }));
  });
}

/** An option that is no row of the table: a fault, and only a choice that picks it waits. */
function layStrange(cell: ChoiceCell, name: string, columns: readonly ValueSpec[], builder: Builder): Slot[] {
  const { table } = cell;
  const path = `${cell.name}.${name}`;
  const first = builder.slots(`${path}#missing`, columns.length);
  const writes = columns.map((_, k) => first + k);
  const one = builder.tables.get(table!)!.one;
  const message = `${named(cell.name)} offers “${name}”: there is no ${one} of that name.${builder.meant(name, builder.rows(table!))}`;
  builder.broken({ cell: cell.id, path, kind: 'choice', writes }, { message });
  return writes;
}
