import { type ArithmeticSign, type ComparisonSign, type Expression, isFixed } from './expression';
import { functionNamed } from './functions';
import { constantOf } from './value';

/** Value of sample i. */
export type Run = (m: Float64Array, i: number) => number;

const TRUE = 1;
const FALSE = 0;

/**
 * Makes a checked expression into a function. `at(name)` is where the name's samples begin; the value of sample i reads
 * `m[at(name) + i]`. A truth is 1 or 0, an option its place in the list. NaN in any part gives NaN, also in the answer of
 * a choice that was not taken.
 */
export function compileFormula(e: Expression, at: (name: string) => number): Run {
  const constant = constantOf(e);
  if (constant !== undefined) return () => constant;
  if (isFixed(e)) {
    const value = runOf(e, at)(NOTHING, 0);
    return () => value;
  }
  return runOf(e, at);
}

const NOTHING = new Float64Array(0);

function runOf(e: Expression, at: (name: string) => number): Run {
  const part = (p: Expression): Run => compileFormula(p, at);
  switch (e.kind) {
    case 'name': {
      const start = at(e.name);
      return (m, i) => m[start + i]!;
    }
    case 'option': {
      const { index } = e;
      return () => index;
    }
    case 'pi':
      return () => Math.PI;
    case 'negative': {
      const of = part(e.of);
      return (m, i) => -of(m, i);
    }
    case 'arithmetic':
      return arithmetic(e.sign, part(e.left), part(e.right), e.right);
    case 'comparison':
      return comparison(e.sign, part(e.left), part(e.right));
    case 'logic':
      return logic(e.word, part(e.left), part(e.right));
    case 'not': {
      const of = part(e.of);
      return (m, i) => {
        const x = of(m, i);
        return Number.isNaN(x) ? x : 1 - x;
      };
    }
    case 'call':
      return call(e.name, e.arguments.map(part));
    case 'choice':
      return choice(part(e.condition), part(e.yes), part(e.no));
    case 'literal':
      throw new RangeError('A literal is a constant');
  }
}

function arithmetic(sign: ArithmeticSign, a: Run, b: Run, right: Expression): Run {
  switch (sign) {
    case '+':
      return (m, i) => a(m, i) + b(m, i);
    case '−':
      return (m, i) => a(m, i) - b(m, i);
    case '×':
      return (m, i) => a(m, i) * b(m, i);
    case '÷':
      return (m, i) => a(m, i) / b(m, i);
    case '^':
      return power(a, b, constantOf(right));
  }
}

function power(a: Run, b: Run, exponent: number | undefined): Run {
  if (exponent === 2) {
    return (m, i) => {
      const x = a(m, i);
      return x * x;
    };
  }
  // Math.pow gives 1 for anything to the power 0, even for NaN, which must not be lost.
  return (m, i) => {
    const x = a(m, i);
    return Number.isNaN(x) ? x : x ** b(m, i);
  };
}

function comparison(sign: ComparisonSign, a: Run, b: Run): Run {
  const holds = comparisons[sign];
  return (m, i) => {
    const x = a(m, i);
    const y = b(m, i);
    if (Number.isNaN(x) || Number.isNaN(y)) return Number.NaN;
    return holds(x, y) ? TRUE : FALSE;
  };
}

const comparisons: Readonly<Record<ComparisonSign, (x: number, y: number) => boolean>> = {
  '=': (x, y) => x === y,
  '≠': (x, y) => x !== y,
  '<': (x, y) => x < y,
  '>': (x, y) => x > y,
  '≤': (x, y) => x <= y,
  '≥': (x, y) => x >= y,
};

/** With 1 and 0, "and" is the lesser and "or" the greater of the two; NaN goes through both. */
function logic(word: 'and' | 'or', a: Run, b: Run): Run {
  return word === 'and' ? (m, i) => Math.min(a(m, i), b(m, i)) : (m, i) => Math.max(a(m, i), b(m, i));
}

function call(name: string, parts: readonly Run[]): Run {
  const f = functionNamed(name);
  if (f === undefined) throw new RangeError(`${name} is not a function; check the formula before it is compiled`);
  const { run } = f;
  if (parts.length === 1) {
    const x = parts[0]!;
    return (m, i) => run(x(m, i));
  }
  if (parts.length === 2) {
    const x = parts[0]!;
    const y = parts[1]!;
    return (m, i) => run(x(m, i), y(m, i));
  }
  return (m, i) => run(...parts.map((part) => part(m, i)));
}

function choice(condition: Run, yes: Run, no: Run): Run {
  return (m, i) => {
    const c = condition(m, i);
    const a = yes(m, i);
    const b = no(m, i);
    if (Number.isNaN(c) || Number.isNaN(a) || Number.isNaN(b)) return Number.NaN;
    return c !== FALSE ? a : b;
  };
}
