import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { agreementCsv } from './propeller-agreement';

it('how near blade elements come to measured propellers is written down in the reference as it is', () => {
  const file = readFileSync(new URL('../../data/propeller-agreement.csv', import.meta.url), 'utf8');
  expect(file, 'npm run reference writes it anew').toBe(agreementCsv());
});
