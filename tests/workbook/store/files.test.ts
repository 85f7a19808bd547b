import { expect, test } from 'vitest';
import { fileName } from '../../../workbook/store/files';

test.each([
  ['Quern 25: engine, tail and tip weight', 'quern-25-engine-tail-and-tip-weight.tetherwright.json'],
  ['  Möwe №2 / zweite ', 'mowe-no2-zweite.tetherwright.json'],
  ['', 'sheet.tetherwright.json'],
  ['???', 'sheet.tetherwright.json'],
])('%s is saved as %s', (title, name) => expect(fileName(title)).toBe(name));
