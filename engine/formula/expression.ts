/** Character range in the text that an expression was read from. */
export interface Place {
  readonly from: number;
  readonly to: number;
}

/** A number as typed, with its unit: `18.3 m`, `3/32 in`, `1 3/32 in`, `4`. The sign stands outside, as a `negative`. */
export interface Literal extends Place {
  readonly kind: 'literal';
  /** The digits as typed, spaces tidied. */
  readonly digits: string;
  /** What the digits say, before the unit. */
  readonly number: number;
  /** A name from the unit table; '' for a plain number. */
  readonly unit: string;
}
export interface Name extends Place {
  readonly kind: 'name';
  /** `reach`, `flight.pull`. */
  readonly name: string;
}
/** The name of an option, put in by the check where an option is compared or wanted; its value is its place in the list. */
export interface OptionName extends Place {
  readonly kind: 'option';
  readonly name: string;
  readonly index: number;
}
interface Pi extends Place {
  readonly kind: 'pi';
}
interface Negative extends Place {
  readonly kind: 'negative';
  readonly of: Expression;
}
export type ArithmeticSign = '+' | '−' | '×' | '÷' | '^';
interface Arithmetic extends Place {
  readonly kind: 'arithmetic';
  readonly sign: ArithmeticSign;
  readonly left: Expression;
  readonly right: Expression;
}
export type ComparisonSign = '=' | '≠' | '<' | '>' | '≤' | '≥';
export interface Comparison extends Place {
  readonly kind: 'comparison';
  readonly sign: ComparisonSign;
  readonly left: Expression;
  readonly right: Expression;
}
interface Logic extends Place {
  readonly kind: 'logic';
  readonly word: 'and' | 'or';
  readonly left: Expression;
  readonly right: Expression;
}
interface Not extends Place {
  readonly kind: 'not';
  readonly of: Expression;
}
export interface Call extends Place {
  readonly kind: 'call';
  readonly name: string;
  readonly arguments: readonly Expression[];
}
/** `if condition then yes else no`; both answers are computed, and a fault in either is a fault of the whole. */
export interface Choice extends Place {
  readonly kind: 'choice';
  readonly condition: Expression;
  readonly yes: Expression;
  readonly no: Expression;
}

export type Expression =
  | Literal
  | Name
  | OptionName
  | Pi
  | Negative
  | Arithmetic
  | Comparison
  | Logic
  | Not
  | Call
  | Choice;

/** The expressions that one is made of, in reading order. */
export function partsOf(e: Expression): readonly Expression[] {
  switch (e.kind) {
    case 'literal':
    case 'name':
    case 'option':
    case 'pi':
      return [];
    case 'negative':
    case 'not':
      return [e.of];
    case 'arithmetic':
    case 'comparison':
    case 'logic':
      return [e.left, e.right];
    case 'call':
      return e.arguments;
    case 'choice':
      return [e.condition, e.yes, e.no];
  }
}

/** Names nothing, so that its value can be told at once. */
export function isFixed(e: Expression): boolean {
  return e.kind !== 'name' && partsOf(e).every(isFixed);
}
