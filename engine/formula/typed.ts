import type { Dimension, UnitSet } from '../units/index';
import type { Expression } from './expression';
import { printFormula } from './print';
import { describeType, type ValueType } from './value-type';

/** Type of everything that can be named; undefined for what can't. */
export type Scope = (name: string) => ValueType | undefined;

/** What a check knows and gathers. */
export interface Context {
  readonly scope: Scope;
  /** What can be named here, for offering a better name. */
  readonly names: () => readonly string[];
  /** Names read so far. */
  readonly reads: Set<string>;
  /** The unit in which an example of such a quantity is given. */
  readonly unitOf: (dimension: Dimension) => string;
}

/** In which units a text is written that is checked: the set of the design, and the unit that its own place shows. */
export interface Written {
  readonly set: UnitSet;
  readonly unit?: string;
}

/** An expression whose type is known. */
export interface Typed<T extends ValueType = ValueType> {
  readonly expression: Expression;
  readonly type: T;
}

/** Something with a dimension. */
export type Amount = Typed<{ readonly kind: 'quantity'; readonly dimension: Dimension }>;

export const isAmount = (value: Typed): value is Amount => value.type.kind === 'quantity';

const LONGEST_LABEL = 40;

/** How a sentence refers to a part: by its own text, if that is short. */
export function label(e: Expression): string {
  const text = printFormula(e);
  return text.length > LONGEST_LABEL ? 'this part' : text;
}

/** "lines.length is a length (m)" */
export const says = ({ expression, type }: Typed): string => `${label(expression)} is ${describeType(type)}`;
