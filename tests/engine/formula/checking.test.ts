import { describe, expect, test } from 'vitest';
import { checkFormula, parseFormula, type Scope, type ValueType } from '../../../engine/formula/index';
import { ONE, unitNamed } from '../../../engine/units/index';
import { caseFiles } from './case-files';
import { spell, spellFault, spellType } from './spell';

/** `kg` → a mass, `balsa, ply` → one of these. */
function typeOf(text: string): ValueType {
  if (text === 'condition') return { kind: 'truth' };
  if (text.includes(',')) return { kind: 'option', options: text.split(', ') };
  return { kind: 'quantity', dimension: text === 'plain' ? ONE : unitNamed(text)!.dimension };
}

function typesIn(head: string): ReadonlyMap<string, ValueType> {
  const lines = head.split('\n').filter((line) => line.includes(': '));
  return new Map(lines.map((line) => line.split(': ') as [string, string]).map(([name, type]) => [name, typeOf(type)]));
}

/** A text may say what its field wants: `wanted kg: 3 × 2 g`. */
function outcome(line: string, types: ReadonlyMap<string, ValueType>): string {
  const [, wanted, text = line] = /^wanted ([^:]+): (.*)$/.exec(line) ?? [];
  const read = parseFormula(text);
  if (!read.ok) return spellFault(read.fault, text);
  const scope: Scope = (name) => types.get(name);
  const names = (): string[] => [...types.keys()];
  const checked = checkFormula(read.expression, scope, names, wanted === undefined ? undefined : typeOf(wanted));
  if (!checked.ok) return spellFault(checked.fault, text);
  const type = spellType(checked.type, checked.reads);
  // Where the check has put in an option, the expression is part of what it says.
  const changed = spell(checked.expression) !== spell(read.expression);
  return changed ? `${type}: ${spell(checked.expression)}` : type;
}

for (const { name, head, cases } of caseFiles('checking')) {
  const types = typesIn(head);
  describe(name, () => {
    test.each(cases)('$title', ({ text, expected }) => {
      expect(outcome(text, types)).toBe(expected);
    });
  });
}
