import { withUnit } from '../units/index';
import type { Expression, Literal } from './expression';
import { saysItsUnit } from './lone';

/** How tightly an expression holds together; a looser one inside a tighter one needs parentheses. */
const CHOICE = 0;
const OR = 1;
const AND = 2;
const NOT = 3;
const COMPARISON = 4;
const SUM = 5;
const PRODUCT = 6;
const SIGN = 7;
const POWER = 8;
const WHOLE = 9;

function tightness(e: Expression): number {
  switch (e.kind) {
    case 'choice':
      return CHOICE;
    case 'logic':
      return e.word === 'or' ? OR : AND;
    case 'not':
      return NOT;
    case 'comparison':
      return COMPARISON;
    case 'arithmetic':
      return e.sign === '^' ? POWER : e.sign === '×' || e.sign === '÷' ? PRODUCT : SUM;
    case 'negative':
      return SIGN;
    default:
      return WHOLE;
  }
}

/** Several signs of one number: `3/32 in` behind ÷ or ^ could be read two ways. */
const isFraction = (e: Expression): boolean => e.kind === 'literal' && e.digits.includes('/');

const parenthesised = (e: Expression): string => `(${printFormula(e)})`;
const atLeast = (e: Expression, least: number): string => (tightness(e) < least ? parenthesised(e) : printFormula(e));
const whole = (e: Expression): string => atLeast(e, WHOLE);

/** An expression as written arithmetic, with the parentheses that it needs. Reading it back gives the same expression. */
export function printFormula(e: Expression): string {
  switch (e.kind) {
    case 'literal':
      return printLiteral(e);
    case 'name':
    case 'option':
      return e.name;
    case 'pi':
      return 'π';
    case 'negative':
      return `−${atLeast(e.of, POWER)}`;
    case 'arithmetic':
      return printArithmetic(e.sign, e.left, e.right);
    case 'comparison':
      return `${atLeast(e.left, SUM)} ${e.sign} ${atLeast(e.right, SUM)}`;
    case 'logic': {
      const level = tightness(e);
      return `${atLeast(e.left, level)} ${e.word} ${atLeast(e.right, level + 1)}`;
    }
    case 'not':
      return `not ${whole(e.of)}`;
    case 'call':
      return `${e.name}(${e.arguments.map(printFormula).join(', ')})`;
    case 'choice':
      return `if ${atLeast(e.condition, OR)} then ${atLeast(e.yes, OR)} else ${printFormula(e.no)}`;
  }
}

function printLiteral({ digits, unit }: Literal): string {
  return saysItsUnit(digits) ? digits : withUnit(digits, unit);
}

function printArithmetic(sign: string, left: Expression, right: Expression): string {
  if (sign === '^') {
    // Behind a unit ^ would be read as part of it: (3 m)^2, not 3 m^2.
    const base = left.kind === 'literal' && (left.unit !== '' || isFraction(left)) ? parenthesised(left) : whole(left);
    return `${base}^${isFraction(right) ? parenthesised(right) : whole(right)}`;
  }
  const level = sign === '+' || sign === '−' ? SUM : PRODUCT;
  const needed = right.kind === 'negative' || (sign === '÷' && isFraction(right));
  return `${atLeast(left, level)} ${sign} ${needed ? parenthesised(right) : atLeast(right, level + 1)}`;
}
