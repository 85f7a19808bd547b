import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkFormula, parseFormula, readText, renameInFormula } from '../../../engine/formula/index';
import { cases } from '../../cases';

const SEED = 902;
const pieces = fc.constantFrom(
  ...'if then else ft lb oz " 1,234 0,5 0:26.1 9x6 12 500 ¼ a b flight.pull 3 3/32 1 0.5 1e3 m mm m/s g ° % °C in ( ) , ? : + - − × * / ÷ ^ ² = == < <= ≠ ! and or not sin min log π . .. " \' # & ; é 𝛼'.split(
    ' ',
  ),
  ' ',
  '  ',
  '\n',
  '\u00a0',
);
const text = fc.oneof(
  fc.array(pieces, { maxLength: 12 }).map((all) => all.join('')),
  fc.array(pieces, { maxLength: 12 }).map((all) => all.join(' ')),
  fc.string({ unit: 'binary', maxLength: 40 }),
);

describe(`whatever is typed, seed ${SEED}`, () => {
  const settings = { seed: SEED, numRuns: cases(10_000) };

  test('it is read, or refused at a place in it with sentences', () => {
    fc.assert(
      fc.property(text, (typed) => {
        for (const result of [parseFormula(typed), readText(typed, 'mm')]) {
          const checked = result.ok ? checkFormula(result.expression, () => undefined) : result;
          if (checked.ok) continue;
          const { from, to, found, allowed, mend, message } = checked.fault;
          expect(from).toBeGreaterThanOrEqual(0);
          expect(to).toBeGreaterThanOrEqual(from);
          expect(to).toBeLessThanOrEqual(typed.length);
          expect(found).toMatch(/\S.*\.$/s);
          expect(mend).toMatch(/[.?]$/);
          expect(message).toBe([found, allowed, mend].filter(Boolean).join(' '));
        }
      }),
      settings,
    );
  });

  test('renaming leaves what cannot be read as it is, and never breaks what can', () => {
    fc.assert(
      fc.property(text, (typed) => {
        const renamed = renameInFormula(typed, 'a', 'quite_new');
        if (parseFormula(typed).ok) expect(parseFormula(renamed).ok).toBe(true);
        else expect(renamed).toBe(typed);
      }),
      settings,
    );
  });
});

test('a text that nests deeper than a call stack is refused by its length', () => {
  const deep = '('.repeat(100_000);
  expect(parseFormula(deep)).toMatchObject({
    ok: false,
    fault: {
      from: 2000,
      to: 100_000,
      message:
        'The formula has 100000 characters. At most 2000 are allowed. Put a part of it on a formula line of its own.',
    },
  });
  expect(parseFormula(`${'('.repeat(999)}a${')'.repeat(999)}`).ok).toBe(true);
  expect(parseFormula(`${'-'.repeat(1999)}a`).ok).toBe(true);
});
