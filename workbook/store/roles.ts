import { computed, type ReadonlySignal } from '@preact/signals';
import { cellsOf, type Description, type Document, roleOf } from '../../engine/index';

/** What the page says of a role (a caution beside the pull of a flight), whatever the cell in that role is called. */
export interface Roles {
  /** A path with the role in place of the cell's name: lap.pull → flight.pull where the cell lap is a flight. */
  rolePath(path: string): string;
  /** Names of the cells that can stand in for a role, in the order of the sheet. */
  namesOfRole(role: string): readonly string[];
}

export function createRoles(
  document: ReadonlySignal<Document>,
  description: ReadonlySignal<Description | undefined>,
): Roles {
  const roles = computed(() => {
    const blocks = description.value?.blocks ?? [];
    const byName = new Map<string, string>();
    for (const cell of cellsOf(document.value)) {
      const role = roleOf(cell, blocks);
      if (role !== undefined) byName.set(cell.name, role);
    }
    return byName;
  });
  const namesOf = (role: string): string[] =>
    [...roles.value].filter(([, each]) => each === role).map(([name]) => name);
  const inPlaceOf = (path: string, first: string, name: string | undefined): string =>
    name === undefined ? path : name + path.slice(first.length);
  return {
    rolePath(path) {
      const first = path.split('.', 1)[0]!;
      return inPlaceOf(path, first, roles.value.get(first));
    },
    namesOfRole: namesOf,
  };
}
