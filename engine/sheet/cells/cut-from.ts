import type { Part } from '../document';

const said = ({ fields }: Part, name: string): string => fields[name]?.trim() ?? '';

/** The material or stack from which a part is cut. */
export function cutFrom(part: Part): string | undefined {
  const stuff = said(part, part.shape === 'stack' ? 'stack' : 'material');
  return part.shape === 'point' || stuff === '' ? undefined : stuff;
}

/** The same, but nothing where the scale or a tolerance of the part's own says how far its mass is off: it is off by itself then. */
export const offWith = (part: Part): string | undefined =>
  said(part, 'weighed') !== '' || said(part, 'mass_tolerance') !== '' ? undefined : cutFrom(part);

/** Whether stuff is what a part was made of: `tail_stock.faced` is the option `faced`. */
export const isMadeOf = (stuff: string, weighedAs: string): boolean =>
  stuff === weighedAs || stuff.endsWith(`.${weighedAs}`);
