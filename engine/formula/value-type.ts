import { type Dimension, describeDimension, ONE, sameDimension } from '../units/index';

/** What kind of value an expression has. */
export type ValueType =
  | { readonly kind: 'quantity'; readonly dimension: Dimension }
  | { readonly kind: 'option'; readonly options: readonly string[] }
  | { readonly kind: 'truth' };

export const PLAIN: ValueType = { kind: 'quantity', dimension: ONE };
export const TRUTH: ValueType = { kind: 'truth' };

export const quantityOf = (dimension: Dimension): ValueType => ({ kind: 'quantity', dimension });

export function sameType(a: ValueType, b: ValueType): boolean {
  if (a.kind === 'quantity') return b.kind === 'quantity' && sameDimension(a.dimension, b.dimension);
  if (a.kind === 'option') {
    return (
      b.kind === 'option' &&
      a.options.length === b.options.length &&
      a.options.every((option, i) => option === b.options[i])
    );
  }
  return b.kind === 'truth';
}

export const isPlain = (type: ValueType): boolean => sameType(type, PLAIN);

const MOST_LISTED = 6;

/** As it stands in a sentence: "a length (m)", "a plain number", "one of balsa, ply", "a condition". */
export function describeType(type: ValueType): string {
  if (type.kind === 'quantity') return describeDimension(type.dimension);
  return type.kind === 'option' ? `one of ${listed(type.options)}` : 'a condition';
}

/** Names with commas, cut short where there are many. */
export function listed(names: readonly string[]): string {
  return names.length > MOST_LISTED ? `${names.slice(0, MOST_LISTED).join(', ')} …` : names.join(', ');
}
