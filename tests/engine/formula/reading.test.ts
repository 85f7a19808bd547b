import { describe, expect, test } from 'vitest';
import { parseFormula } from '../../../engine/formula/index';
import { caseFiles } from './case-files';
import { spell, spellFault } from './spell';

const outcome = (text: string): string => {
  const read = parseFormula(text);
  return read.ok ? spell(read.expression) : spellFault(read.fault, text);
};

for (const { name, cases } of caseFiles('reading')) {
  describe(name, () => {
    test.each(cases)('$title', ({ text, expected }) => {
      expect(outcome(text)).toBe(expected);
    });
  });
}
