import { expect, test } from 'vitest';
import { culpritWords, verdictOf } from '../../../workbook/cells/block/found-cg-words';

const shown: Readonly<Record<string, string>> = {
  ...{
    x: '45 mm',
    x_error: '2 mm',
    table_x: '36 mm',
    difference_x: '9 mm aft',
    unsure_x: '3 mm',
    difference_y: '6 mm outboard',
  },
  ...{ difference_mass: '12 g more', lacking_mass: '12 g missing', lacking_x: '245 mm' },
};
const told = (values: Readonly<Record<string, number>>, texts: Readonly<Record<string, string>> = {}) => ({
  value: (result: string) => values[result] ?? Number.NaN,
  shown: (result: string) => texts[result] ?? shown[result] ?? '–',
});
const weighed = { mass: 0.812, lacking_mass: 0.012, lacking_x: 0.245 };

test('says what was found beside the table', () => {
  expect(verdictOf({ state: 'unmeasured', differs: [] }, told({}))).toEqual([
    'Nothing tells the CG yet. Type what you find in any one of these ways; each further one makes it surer.',
  ]);
  expect(verdictOf({ state: 'agrees', differs: [] }, told(weighed))).toEqual([
    'The CG is at 45 mm, ± 2 mm; the table has it at 36 mm.',
    'They agree within twice what is unsure of both.',
  ]);
});

test('says which differs, and which mass where would explain it', () => {
  expect(verdictOf({ state: 'differs', differs: ['x', 'y', 'mass'] }, told(weighed))).toEqual([
    'The CG is at 45 mm, ± 2 mm; the table has it at 36 mm.',
    'It lies 9 mm aft of the table’s, where ± 3 mm is unsure.',
    'Across it lies 6 mm outboard of the table’s.',
    'The model weighs 12 g more than the table.',
    '12 g at 245 mm that are missing in the table would explain it.',
  ]);
  const less = told({ ...weighed, lacking_mass: -0.012 }, { lacking_mass: '12 g too much' });
  expect(verdictOf({ state: 'differs', differs: ['x'] }, less).at(-1)).toBe(
    '12 g at 245 mm that are counted in the table and not there would explain it.',
  );
  expect(verdictOf({ state: 'differs', differs: ['x'] }, told({ lacking_mass: 0.012, lacking_x: 0.5 })).at(-1)).toBe(
    '12 g at 245 mm that are missing in the table would explain it. Put the whole model on the scale, and it can be told how much and where.',
  );
  expect(verdictOf({ state: 'differs', differs: ['x'] }, told({ ...weighed, lacking_x: Number.NaN })).at(-1)).toBe(
    'It weighs what the table says: something stands elsewhere than it is typed.',
  );
});

test('says of what is often forgotten what it would do', () => {
  const part = { name: 'skid', title: 'Tail skid', shape: 'point', fields: {} } as const;
  const thing = { part, about: '', source: '', memory: true, mass: 0.004, x: 0.548, y: 0, shiftX: 0.002, shiftY: 0 };
  expect(culpritWords({ thing, explains: 0.4, leftX: 0.0012 }, undefined, undefined).replaceAll('\u00a0', ' ')).toBe(
    '4 g at 548 mm: takes 40 % of what does not fit, and leaves the CG off by +1.2 mm.',
  );
});
