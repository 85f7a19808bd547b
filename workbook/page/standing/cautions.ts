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

/** Paths of the results that a caution takes the greatest of, as the pieces of this design have them. */
export const resultsOf = (
  { greatest }: Pick<RoleCaution, 'greatest'>,
  { namesOfRole }: Pick<Reads, 'namesOfRole'>,
): readonly string[] =>
  greatest.flatMap((path) => {
    const [role, result] = path.split('.') as [string, string];
    return namesOfRole(role).map((name) => `${name}.${result}`);
  });

/** Path of the result by whose limit a caution of a cell stands or not; none for what always stands. */
export const limitOf = ({ over }: Pick<RoleCaution, 'over'>, cell: string): readonly string[] =>
  over ? [`${cell}.${over.result}`] : [];

/** Whether a caution of a cell stands now: one that has a limit only while its result is over it. */
export const stands = (caution: Pick<RoleCaution, 'over'>, cell: string, { value }: Pick<Reads, 'value'>): boolean =>
  limitOf(caution, cell).every((path) => value(path) > caution.over!.at);

/** Path of the greatest of a caution's results that any piece of the design has; '' where none has a number. */
export function greatestOf(caution: Pick<RoleCaution, 'greatest'>, sheet: Reads): string {
  let found = '';
  for (const here of resultsOf(caution, sheet)) {
    if (Number.isNaN(sheet.value(here))) continue;
    if (found === '' || sheet.value(here) > sheet.value(found)) found = here;
  }
  return found;
}
