import { type ArithmeticSign, type ComparisonSign, type Expression, isFixed, partsOf } from './expression';
import { functionNamed } from './functions';
import { constantOf } from './value';

/** Value of sample i. */
export type Run = (m: Float64Array, i: number) => number;

/**
 * Computes a part of a formula for sample i and leaves its value in the part's own place of `room`. A function that gave the value back would
 * put a number on the heap for every part of every design.
 */
type Part = (m: Float64Array, i: number) => void;

/** Where the parts of one formula leave their values, and how many places are taken. */
interface Room {
  readonly values: Float64Array;
  taken: number;
}

/** A part, and where it leaves its value. */
interface Placed {
  readonly run: Part;
  readonly to: number;
}

const TRUE = 1;
const FALSE = 0;

/**
 * Makes a checked expression into a function. `at(name)` is where the name's samples begin; the value of sample i reads
 * `m[at(name) + i]`. A truth is 1 or 0, an option its place in the list. NaN in any part gives NaN, also in the answer of
 * a choice that was not taken.
 */
export function compileFormula(e: Expression, at: (name: string) => number): Run {
  const values = new Float64Array(sizeOf(e));
  const { run, to } = placed(e, at, { values, taken: 0 });
  return (m, i) => {
    run(m, i);
    return values[to]!;
  };
}

const sizeOf = (e: Expression): number => partsOf(e).reduce((sum, part) => sum + sizeOf(part), 1);

const NOTHING = new Float64Array(0);
const nothing: Part = () => undefined;

function placed(e: Expression, at: (name: string) => number, room: Room): Placed {
  const to = room.taken++;
  const constant = constantOf(e);
  if (constant !== undefined) {
    room.values[to] = constant;
    return { run: nothing, to };
  }
  const run = partOf(e, at, room, to);
  if (!isFixed(e)) return { run, to };
  run(NOTHING, 0);
  return { run: nothing, to };
}

function partOf(e: Expression, at: (name: string) => number, room: Room, to: number): Part {
  const v = room.values;
  const part = (p: Expression): Placed => placed(p, at, room);
  switch (e.kind) {
    case 'name': {
      const start = at(e.name);
      return (m, i) => {
        v[to] = m[start + i]!;
      };
    }
    case 'option': {
      const { index } = e;
      return () => {
        v[to] = index;
      };
    }
    case 'pi':
      return () => {
        v[to] = Math.PI;
      };
    case 'negative': {
      const of = part(e.of);
      return (m, i) => {
        of.run(m, i);
        v[to] = -v[of.to]!;
      };
    }
    case 'arithmetic':
      return arithmetic(e.sign, part(e.left), part(e.right), e.right, v, to);
    case 'comparison':
      return comparison(e.sign, part(e.left), part(e.right), v, to);
    case 'logic':
      return logic(e.word, part(e.left), part(e.right), v, to);
    case 'not': {
      const of = part(e.of);
      return (m, i) => {
        of.run(m, i);
        const x = v[of.to]!;
        v[to] = Number.isNaN(x) ? x : 1 - x;
      };
    }
    case 'call':
      return call(e.name, e.arguments.map(part), v, to);
    case 'choice':
      return choice(part(e.condition), part(e.yes), part(e.no), v, to);
    case 'literal':
      throw new RangeError('A literal is a constant');
  }
}

function arithmetic(sign: ArithmeticSign, a: Placed, b: Placed, right: Expression, v: Float64Array, to: number): Part {
  switch (sign) {
    case '+':
      return (m, i) => {
        a.run(m, i);
        b.run(m, i);
        v[to] = v[a.to]! + v[b.to]!;
      };
    case '−':
      return (m, i) => {
        a.run(m, i);
        b.run(m, i);
        v[to] = v[a.to]! - v[b.to]!;
      };
    case '×':
      return (m, i) => {
        a.run(m, i);
        b.run(m, i);
        v[to] = v[a.to]! * v[b.to]!;
      };
    case '÷':
      return (m, i) => {
        a.run(m, i);
        b.run(m, i);
        v[to] = v[a.to]! / v[b.to]!;
      };
    case '^':
      return power(a, b, constantOf(right), v, to);
  }
}

function power(a: Placed, b: Placed, exponent: number | undefined, v: Float64Array, to: number): Part {
  if (exponent === 2) {
    return (m, i) => {
      a.run(m, i);
      const x = v[a.to]!;
      v[to] = x * x;
    };
  }
  // Math.pow gives 1 for anything to the power 0, even for NaN, which must not be lost.
  return (m, i) => {
    a.run(m, i);
    b.run(m, i);
    const x = v[a.to]!;
    v[to] = Number.isNaN(x) ? x : x ** v[b.to]!;
  };
}

function comparison(sign: ComparisonSign, a: Placed, b: Placed, v: Float64Array, to: number): Part {
  const holds = comparisons[sign];
  return (m, i) => {
    a.run(m, i);
    b.run(m, i);
    const x = v[a.to]!;
    const y = v[b.to]!;
    if (Number.isNaN(x) || Number.isNaN(y)) v[to] = Number.NaN;
    else v[to] = holds(x, y) ? TRUE : FALSE;
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
function logic(word: 'and' | 'or', a: Placed, b: Placed, v: Float64Array, to: number): Part {
  const both = word === 'and';
  return (m, i) => {
    a.run(m, i);
    b.run(m, i);
    v[to] = both ? Math.min(v[a.to]!, v[b.to]!) : Math.max(v[a.to]!, v[b.to]!);
  };
}

function call(name: string, parts: readonly Placed[], v: Float64Array, to: number): Part {
  const f = functionNamed(name);
  if (f === undefined) throw new RangeError(`${name} is not a function; check the formula before it is compiled`);
  const { run } = f;
  if (parts.length === 1) {
    const x = parts[0]!;
    return (m, i) => {
      x.run(m, i);
      v[to] = run(v[x.to]!);
    };
  }
  if (parts.length === 2) {
    const x = parts[0]!;
    const y = parts[1]!;
    return (m, i) => {
      x.run(m, i);
      y.run(m, i);
      v[to] = run(v[x.to]!, v[y.to]!);
    };
  }
  return (m, i) => {
    for (const part of parts) part.run(m, i);
    v[to] = run(...parts.map((part) => v[part.to]!));
  };
}

function choice(condition: Placed, yes: Placed, no: Placed, v: Float64Array, to: number): Part {
  return (m, i) => {
    condition.run(m, i);
    yes.run(m, i);
    no.run(m, i);
    const c = v[condition.to]!;
    const a = v[yes.to]!;
    const b = v[no.to]!;
    if (Number.isNaN(c) || Number.isNaN(a) || Number.isNaN(b)) v[to] = Number.NaN;
    else v[to] = c !== FALSE ? a : b;
  };
}
