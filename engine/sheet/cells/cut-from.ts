import type { Part } from '../document';

/**
 * The material or stack from which a part is cut, whose weight is off for all that is cut from it alike. Nothing where the scale or a tolerance of the
 * part's own says how far its mass is off.
 */
export function cutFrom({ shape, fields }: Part): string | undefined {
  const says = (name: string): string => fields[name]?.trim() ?? '';
  if (says('weighed') !== '' || says('mass_tolerance') !== '') return undefined;
  const stuff = says(shape === 'stack' ? 'stack' : 'material');
  return shape === 'point' || stuff === '' ? undefined : stuff;
}
