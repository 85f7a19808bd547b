import { AREAL_MASS, DENSITY, type Dimension, LINEAR_MASS, sameDimension } from '../../units/index';
import { named } from '../named';
import type { Slot } from '../program';
import type { Builder } from '../specs';

export type Found = { readonly slot: Slot; readonly fault?: undefined } | { readonly fault: string };

/** The density that a material text of something names: a material, or any name that has a density (a choice among woods). */
export const densityOf = (of: string, stuff: string, builder: Builder): Found =>
  numberOf(of, stuff, 'density', DENSITY, 'material', builder);

/** The areal mass that a stack text names: a choice of stacks, one of its options, or any name that has one. */
export const arealMassOf = (of: string, stack: string, builder: Builder): Found =>
  numberOf(of, stack, 'areal_mass', AREAL_MASS, 'stack', builder);

/** The mass per length that the text of a part off the roll names: a wire, a line, a tube, or any name that has one. */
export const linearMassOf = (of: string, wire: string, builder: Builder): Found =>
  numberOf(of, wire, 'linear_mass', LINEAR_MASS, 'wire, line or tube', builder);

function numberOf(
  of: string,
  name: string,
  number: string,
  dimension: Dimension,
  what: string,
  builder: Builder,
): Found {
  const reach = builder.find(`${name}.${number}`);
  const type = reach?.type;
  const fits = !type || (type.kind === 'quantity' && sameDimension(type.dimension, dimension));
  if (reach && fits) return { slot: reach.slot };
  const ending = `.${number}`;
  const known = builder
    .paths()
    .filter((each) => each.endsWith(ending))
    .map((each) => each.slice(0, -ending.length));
  return { fault: `${named(of)} is made of “${name}”: there is no ${what} of that name.${builder.meant(name, known)}` };
}
