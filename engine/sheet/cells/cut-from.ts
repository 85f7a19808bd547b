import type { Part } from '../document';

const said = ({ fields }: Part, name: string): string => fields[name]?.trim() ?? '';

/** Text that names what a part of this shape is cut from, where it isn't its material. */
const STUFF: Partial<Record<Part['shape'], string>> = { stack: 'stack', run: 'wire' };

/** The material, stack or wire from which a part is cut. */
export function cutFrom(part: Part): string | undefined {
  const stuff = said(part, STUFF[part.shape] ?? 'material');
  return part.shape === 'point' || stuff === '' ? undefined : stuff;
}

/** The same, but nothing where the scale, unless it counts as re-made, or a tolerance of the part's own says how far its mass is off: it is off by itself then. */
export const offWith = (part: Part, isRemade: boolean): string | undefined =>
  (said(part, 'weighed') !== '' && !isRemade) || said(part, 'mass_tolerance') !== '' ? undefined : cutFrom(part);

/** Whether stuff is what a part was made of: `tail_stock.faced` is the option `faced`. */
export const isMadeOf = (stuff: string, weighedAs: string): boolean =>
  stuff === weighedAs || stuff.endsWith(`.${weighedAs}`);
