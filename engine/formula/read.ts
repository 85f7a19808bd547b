import type { SyntaxNode } from '@lezer/common';
import { unitNamed, units } from '../units/index';
import type { ArithmeticSign, ComparisonSign, Expression, Literal, Place } from './expression';
import { refuse } from './fault';
import { nearestName } from './near';

const unitNames = units.map((unit) => unit.name).filter((name) => name !== '');

const ARITHMETIC: Readonly<Record<string, ArithmeticSign>> = {
  '+': '+',
  '-': '−',
  '−': '−',
  '–': '−',
  '*': '×',
  '×': '×',
  '/': '÷',
  '÷': '÷',
};
const COMPARISONS: Readonly<Record<string, ComparisonSign>> = {
  '=': '=',
  '≠': '≠',
  '!=': '≠',
  '<': '<',
  '>': '>',
  '≤': '≤',
  '<=': '≤',
  '≥': '≥',
  '>=': '≥',
};

const children = (node: SyntaxNode): SyntaxNode[] => {
  const all: SyntaxNode[] = [];
  for (let child = node.firstChild; child; child = child.nextSibling) all.push(child);
  return all;
};

/** Makes an expression of a syntax tree without errors. Refuses what the grammar takes but nobody should have to guess. */
export function readNode(node: SyntaxNode, text: string): Expression {
  const place: Place = { from: node.from, to: node.to };
  const parts = children(node);
  const part = (i: number): Expression => readNode(parts[i]!, text);
  const sign = (i: number): string => text.slice(parts[i]!.from, parts[i]!.to);
  switch (node.name) {
    case 'Formula':
      return part(0);
    case 'Literal':
      return readLiteral(place, parts, text);
    case 'Name': {
      const name = text.slice(node.from, node.to);
      return name === 'pi' || name === 'π' ? { kind: 'pi', ...place } : { kind: 'name', ...place, name };
    }
    case 'Parenthesised':
      return part(1);
    case 'Call':
      return {
        kind: 'call',
        ...place,
        name: sign(0),
        arguments: children(parts[1]!)
          .filter((child) => child.type.is('Expression'))
          .map((child) => readNode(child, text)),
      };
    case 'Signed': {
      const of = part(1);
      return sign(0) === '+' ? { ...of, from: node.from } : { kind: 'negative', ...place, of };
    }
    case 'Power':
      return { kind: 'arithmetic', ...place, sign: '^', left: part(0), right: readExponent(parts, text) };
    case 'Product':
    case 'Sum': {
      const arithmetic = ARITHMETIC[sign(1)]!;
      if (arithmetic === '÷') refuseFraction(parts[2]!, text);
      return { kind: 'arithmetic', ...place, sign: arithmetic, left: part(0), right: part(2) };
    }
    case 'Comparison': {
      if (parts[0]!.name === 'Comparison') refuseChain(place, parts, text);
      return { kind: 'comparison', ...place, sign: COMPARISONS[sign(1)]!, left: part(0), right: part(2) };
    }
    case 'Negation':
      return { kind: 'not', ...place, of: part(1) };
    case 'Conjunction':
      return { kind: 'logic', ...place, word: 'and', left: part(0), right: part(2) };
    case 'Disjunction':
      return { kind: 'logic', ...place, word: 'or', left: part(0), right: part(2) };
    default:
      return { kind: 'choice', ...place, condition: part(0), yes: part(2), no: part(4) };
  }
}

function readLiteral(place: Place, [number, unit]: readonly SyntaxNode[], text: string): Literal {
  const typed = text.slice(number!.from, number!.to);
  const digits = typed.replace('−', '-').replace(/\s+/g, ' ');
  const spelled = unit ? text.slice(unit.from, unit.to) : '';
  if (unit?.name === 'UnknownUnit') refuseUnit(unit, digits, spelled);
  return { kind: 'literal', ...place, digits, number: numberOf(digits), unit: unitNamed(spelled)!.name };
}

/** What digits say: `18.3`, `1e-3`, `3/32`, `1 3/32`. */
export function numberOf(digits: string): number {
  const fraction = /^(?:([0-9]+) )?([0-9]+)\/([0-9]+)$/.exec(digits);
  if (!fraction) return Number(digits);
  const [, wholes = '0', above, below] = fraction;
  return Number(wholes) + Number(above) / Number(below);
}

function readExponent(parts: readonly SyntaxNode[], text: string): Expression {
  const [, sign, exponent] = parts;
  if (exponent) {
    refuseFraction(exponent, text);
    return readNode(exponent, text);
  }
  const digits = text.slice(sign!.from, sign!.to) === '²' ? '2' : '3';
  return { kind: 'literal', from: sign!.from, to: sign!.to, digits, number: Number(digits), unit: '' };
}

function refuseFraction(node: SyntaxNode, text: string): void {
  const first = node.name === 'Literal' ? node.firstChild! : undefined;
  if (first?.name !== 'Fraction' && first?.name !== 'MixedNumber') return;
  const written = text.slice(node.from, node.to);
  refuse(
    node,
    `${written} behind a division or a power can be read in two ways.`,
    '',
    `Write (${written}) if it is one number.`,
  );
}

function refuseChain(place: Place, parts: readonly SyntaxNode[], text: string): never {
  const [left, sign, right] = parts;
  const middle = left!.lastChild!;
  const of = (a: SyntaxNode, b: SyntaxNode): string => text.slice(a.from, b.to).trim();
  return refuse(
    place,
    'Two comparisons stand in a row.',
    'Two values can be compared at a time.',
    `Write ${of(left!, left!)} and ${of(middle, middle)} ${of(sign!, sign!)} ${of(right!, right!)}.`,
  );
}

function refuseUnit(place: Place, digits: string, spelled: string): never {
  const near = nearestName(spelled, unitNames);
  const multiply = `To multiply, write ${digits} × ${spelled}.`;
  return refuse(
    place,
    `${spelled} is not a unit.`,
    'Behind a number stands a unit, such as mm, g or m/s.',
    near === undefined ? multiply : `Did you mean ${digits} ${near}? ${multiply}`,
  );
}
