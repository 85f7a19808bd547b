import { expect, test } from 'vitest';
import { splitShared } from '../../../workbook/charts/line/shared-words';

test.each([
  [
    ['Nose-over margin on pavement', 'Nose-over margin on short grass', 'Nose-over margin on long grass'],
    'Nose-over margin',
    ['on pavement', 'on short grass', 'on long grass'],
  ],
  [['Propeller clearance, level', 'Propeller clearance, at rest'], 'Propeller clearance', ['level', 'at rest']],
  [['Bending moment', 'Torsion'], 'Bending moment and torsion', ['Bending moment', 'Torsion']],
  [['Least pull', 'Least pull in a gust'], 'Least', ['pull', 'pull in a gust']],
])('of %j the shared words are "%s"', (titles, shared, rest) => {
  expect(splitShared(titles)).toEqual({ shared, rest });
});
