import {
  describeType,
  type Expression,
  type FormulaFault,
  partsOf,
  type ValueType,
} from '../../../engine/formula/index';

/** An expression with all its structure in sight: `(÷ (3 m) span)`. */
export function spell(e: Expression): string {
  const parts = partsOf(e).map(spell);
  switch (e.kind) {
    case 'literal':
      return e.unit === '' ? e.digits : `[${e.digits} ${e.unit}]`;
    case 'name':
      return e.name;
    case 'option':
      return `${e.name}#${e.index}`;
    case 'pi':
      return 'π';
    case 'arithmetic':
    case 'comparison':
      return `(${[e.sign, ...parts].join(' ')})`;
    case 'logic':
      return `(${[e.word, ...parts].join(' ')})`;
    case 'negative':
      return `(− ${parts[0]})`;
    case 'not':
      return `(not ${parts[0]})`;
    case 'call':
      return `(${[e.name, ...parts].join(' ')})`;
    case 'choice':
      return `(? ${parts.join(' ')})`;
  }
}

/** A fault with the text that it points at. */
export function spellFault(fault: FormulaFault, text: string): string {
  return `fault at ${fault.from}–${fault.to} "${text.slice(fault.from, fault.to)}": ${fault.message}`;
}

export function spellType(type: ValueType, reads: readonly string[]): string {
  return `${describeType(type)}, reads ${reads.join(' ') || 'nothing'}`;
}
