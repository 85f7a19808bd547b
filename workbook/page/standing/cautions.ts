import type { RoleCaution } from '../../../engine/index';

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
