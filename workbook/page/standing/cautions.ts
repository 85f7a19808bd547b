import type { RoleCaution } from '../../../engine/index';

interface Reads {
  namesOfRole(role: string): readonly string[];
  value(path: string): number;
}

/** Cautions that stand after the figure at `index`: after the last of the figures that they bear on. */
export function cautionsAfter(
  cautions: readonly RoleCaution[],
  figures: readonly string[],
  index: number,
): readonly RoleCaution[] {
  const path = figures[index];
  if (path === undefined) return [];
  const later = figures.slice(index + 1);
  return cautions.filter(
    (caution) => caution.figures.includes(path) && !later.some((other) => caution.figures.includes(other)),
  );
}

/** Path of the greatest of a caution's results that any piece of the design has; '' where none has a number. */
export function greatestOf({ greatest }: Pick<RoleCaution, 'greatest'>, sheet: Reads): string {
  let found = '';
  for (const path of greatest) {
    const [role, result] = path.split('.') as [string, string];
    for (const name of sheet.namesOfRole(role)) {
      const here = `${name}.${result}`;
      if (Number.isNaN(sheet.value(here))) continue;
      if (found === '' || sheet.value(here) > sheet.value(found)) found = here;
    }
  }
  return found;
}
