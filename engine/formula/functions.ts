/** How the dimension of a function's value follows from its arguments. */
type FunctionTyping =
  /** Plain number to plain number. */
  | 'plain'
  /** One argument of any dimension, the value has the same. */
  | 'same'
  /** Any number of arguments of one dimension, the value has the same. */
  | 'alike'
  /** Any dimension, the value has its square root. */
  | 'root'
  /** One argument of any dimension, the value is a plain number. */
  | 'ratio'
  /** Two arguments of one dimension, the value is a plain number. */
  | 'angle';

export interface FormulaFunction {
  readonly name: string;
  /** Other usual typed names. */
  readonly aliases: readonly string[];
  readonly doc: string;
  readonly typing: FunctionTyping;
  /** Least and most arguments. */
  readonly arity: readonly [number, number];
  readonly run: (...x: number[]) => number;
}

function one(
  name: string,
  typing: FunctionTyping,
  doc: string,
  run: (x: number) => number,
  aliases: readonly string[] = [],
): FormulaFunction {
  return { name, aliases, doc, typing, arity: [1, 1], run };
}

const roundAway = (x: number): number => Math.sign(x) * Math.round(Math.abs(x));

/** Functions of ISO 80000-2 by their usual typed names, and what a builder needs besides. */
export const functions: readonly FormulaFunction[] = [
  one('sin', 'plain', 'Sine of an angle.', Math.sin),
  one('cos', 'plain', 'Cosine of an angle.', Math.cos),
  one('tan', 'plain', 'Tangent of an angle.', Math.tan),
  one('asin', 'plain', 'Angle whose sine it is, from −90° to 90°.', Math.asin, ['arcsin']),
  one('acos', 'plain', 'Angle whose cosine it is, from 0° to 180°.', Math.acos, ['arccos']),
  one('atan', 'plain', 'Angle whose tangent it is, from −90° to 90°.', Math.atan, ['arctan']),
  {
    name: 'atan2',
    aliases: [],
    doc: 'Angle of the point with this height and this distance, in this order, from −180° to 180°.',
    typing: 'angle',
    arity: [2, 2],
    run: (height: number, distance: number) => Math.atan2(height, distance),
  },
  one('sinh', 'plain', 'Hyperbolic sine.', Math.sinh),
  one('cosh', 'plain', 'Hyperbolic cosine.', Math.cosh),
  one('tanh', 'plain', 'Hyperbolic tangent.', Math.tanh),
  one('sqrt', 'root', 'Square root.', Math.sqrt),
  one('exp', 'plain', 'e to this power.', Math.exp),
  one('ln', 'plain', 'Natural logarithm.', Math.log),
  one('lg', 'plain', 'Logarithm to base ten.', Math.log10, ['log10']),
  one('abs', 'same', 'The value without its sign.', Math.abs),
  one('sgn', 'ratio', '1 above zero, −1 below, 0 at zero.', Math.sign),
  {
    name: 'min',
    aliases: [],
    doc: 'The least of them.',
    typing: 'alike',
    arity: [2, Number.POSITIVE_INFINITY],
    run: Math.min,
  },
  {
    name: 'max',
    aliases: [],
    doc: 'The greatest of them.',
    typing: 'alike',
    arity: [2, Number.POSITIVE_INFINITY],
    run: Math.max,
  },
  one('floor', 'plain', 'The next whole number below.', Math.floor),
  one('ceil', 'plain', 'The next whole number above.', Math.ceil),
  one('round', 'plain', 'The nearest whole number; a half goes away from zero.', roundAway),
];

const byName = new Map(functions.flatMap((f) => [f.name, ...f.aliases].map((name) => [name, f] as const)));

export function functionNamed(name: string): FormulaFunction | undefined {
  return byName.get(name);
}

export const functionNames: readonly string[] = [...byName.keys()];

/** Words that mean something in a formula by themselves and so can't name anything else. */
export const reservedWords: ReadonlySet<string> = new Set(['and', 'or', 'not', 'if', 'then', 'else', 'pi', 'π']);
