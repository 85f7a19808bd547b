import type { SyntaxNode } from '@lezer/common';
import type { UnitSet } from '../units/index';
import type { Expression, Literal, Place } from './expression';
import { inPlace, refuse } from './fault';
import { type Amount, readLiteral } from './literal';
import { ARITHMETIC_SIGNS, COMPARISON_SIGNS } from './signs';

const children = (node: SyntaxNode): SyntaxNode[] => {
  const all: SyntaxNode[] = [];
  for (let child = node.firstChild; child; child = child.nextSibling) all.push(child);
  return all;
};

/** Makes an expression of a syntax tree without errors. Refuses what the grammar takes but nobody should have to guess. */
export function readNode(node: SyntaxNode, text: string, set: UnitSet): Expression {
  const place: Place = { from: node.from, to: node.to };
  const parts = children(node);
  const part = (i: number): Expression => readNode(parts[i]!, text, set);
  const words = (i: number): string => text.slice(parts[i]!.from, parts[i]!.to);
  switch (node.name) {
    case 'Formula':
      return part(0);
    case 'Literal':
      return readLiteral(amountsOf(parts, text), set);
    case 'Name': {
      const name = text.slice(node.from, node.to);
      return name === 'pi' || name === 'π' ? { kind: 'pi', ...place } : { kind: 'name', ...place, name };
    }
    case 'Parenthesised':
      return part(1);
    case 'Call': {
      const given = children(parts[1]!).filter((child) => child.type.is('Expression'));
      return { kind: 'call', ...place, name: words(0), arguments: given.map((child) => readNode(child, text, set)) };
    }
    case 'Signed': {
      const of = part(1);
      return words(0) === '+' ? { ...of, from: node.from } : { kind: 'negative', ...place, of };
    }
    case 'Power': {
      const exponent = parts.length > 2 ? part(2) : readSuperscript(parts[1]!, text);
      refuseFraction(parts.at(-1)!, text);
      return { kind: 'arithmetic', ...place, sign: '^', left: part(0), right: exponent };
    }
    case 'Product':
    case 'Sum': {
      const sign = ARITHMETIC_SIGNS[words(1)]!;
      if (sign === '÷') refuseFraction(parts[2]!, text);
      return { kind: 'arithmetic', ...place, sign, left: part(0), right: part(2) };
    }
    case 'Comparison': {
      if (parts[0]!.name === 'Comparison') refuseChain(parts, text);
      return { kind: 'comparison', ...place, sign: COMPARISON_SIGNS[words(1)]!, left: part(0), right: part(2) };
    }
    case 'Negation':
      return { kind: 'not', ...place, of: part(1) };
    case 'Conjunction':
      return { kind: 'logic', ...place, word: 'and', left: part(0), right: part(2) };
    case 'Disjunction':
      return { kind: 'logic', ...place, word: 'or', left: part(0), right: part(2) };
    case 'Choice':
      return parts[0]!.name === 'If'
        ? { kind: 'choice', ...place, condition: part(1), yes: part(3), no: part(5) }
        : { kind: 'choice', ...place, condition: part(0), yes: part(2), no: part(4) };
    default:
      throw new RangeError(`${node.name} is a node that the reader does not know`);
  }
}

/** A number and its unit, as often as they stand in a row. */
function amountsOf(parts: readonly SyntaxNode[], text: string): Amount[] {
  const amounts: Amount[] = [];
  for (const { name, from, to } of parts) {
    const before = amounts.at(-1);
    if (before && (name === 'Unit' || name === 'UnknownUnit')) {
      amounts[amounts.length - 1] = { ...before, to, spelled: text.slice(from, to) };
    } else amounts.push({ from, to, typed: text.slice(from, to), spelled: '' });
  }
  return amounts;
}

function readSuperscript({ from, to }: SyntaxNode, text: string): Literal {
  const digits = text.slice(from, to) === '²' ? '2' : '3';
  return { kind: 'literal', from, to, digits, number: Number(digits), unit: '' };
}

/** Behind ÷ and ^ the stroke of 3/32 could as well divide once more. */
function refuseFraction(node: SyntaxNode, text: string): void {
  if (node.name === 'Signed') {
    refuseFraction(node.lastChild!, text);
    return;
  }
  const first = node.name === 'Literal' ? node.firstChild! : undefined;
  if (first?.name !== 'Fraction' && first?.name !== 'MixedNumber') return;
  const written = text.slice(node.from, node.to);
  const found = `${written} behind a division or a power can be read in two ways.`;
  refuse(node, found, '', `Write (${written}) if it is one number.`, inPlace(node, `(${written})`));
}

function refuseChain(parts: readonly SyntaxNode[], text: string): never {
  const [left, sign, right] = parts;
  const middle = left!.lastChild!;
  const first = text.slice(left!.from, left!.to);
  const second = text.slice(middle.from, middle.to);
  const rest = text.slice(sign!.from, right!.to);
  const place = { from: left!.from, to: right!.to };
  const better = `${first} and ${second} ${rest}`;
  return refuse(
    place,
    'Two comparisons stand in a row.',
    'Two values can be compared at a time.',
    `Write ${better}.`,
    inPlace(place, better),
  );
}
