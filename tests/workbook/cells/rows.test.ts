import { describe, expect, test } from 'vitest';
import { applyChanges, cellsOf, type Variable, type VariablesCell } from '../../../engine/index';
import { inOtherUnit, moved } from '../../../workbook/cells/rows/edits';
import { firstUnit, unitGroups } from '../../../workbook/cells/rows/units';
import {
  copyOfVariable,
  retitleVariable,
  withoutVariable,
  withVariable,
} from '../../../workbook/cells/variables/edits';
import { documentOf, formula, variable, variables } from '../../engine/sheet/small';

const row = (texts: Partial<Variable>): Variable => ({ ...variable('lead', 'g', '21 g'), ...texts });

test('a row moves as far as the ends of its list', () => {
  expect(moved([1, 2, 3], 0, 1)).toEqual([2, 1, 3]);
  expect(moved([1, 2, 3], 2, -1)).toEqual([1, 3, 2]);
  const list = [1, 2, 3];
  expect(moved(list, 0, -1)).toBe(list);
  expect(moved(list, 2, 1)).toBe(list);
});

describe('another unit', () => {
  test('of the same kind leaves every number the size that it was', () => {
    const changed = inOtherUnit(row({ text: '21', low: '0 g', high: '2 oz', step: 'tail / 2' }), 'oz');
    expect(changed).toMatchObject({ unit: 'oz', text: '21 g', low: '0 g', high: '2 oz', step: 'tail / 2' });
    expect(inOtherUnit(row({ unit: '', text: '0.5' }), '%').text).toBe('50 %');
  });
  test('of another kind keeps the numbers and leaves what is no number to its author', () => {
    const changed = inOtherUnit(row({ text: '21 g', low: '-5', high: '2 * lead', step: '' }), 'mm');
    expect(changed).toMatchObject({ unit: 'mm', text: '21 mm', low: '-5', high: '2 * lead', step: '' });
    expect(inOtherUnit(row({ text: '21 g' }), '').text).toBe('21');
  });
});

describe('the units of one kind of quantity', () => {
  const group = (words: string) => unitGroups().find((each) => each.words === words);
  test('stand together, and no other with them', () => {
    expect(group('a mass')?.units.map(({ name }) => name)).toEqual(['mg', 'g', 'kg', 'oz', 'lb', 'slug']);
    expect(group('an angle or a share')?.units.map(({ name }) => name)).toContain('°');
  });
  test('begin with the one of every day in the units of the design', () => {
    expect(firstUnit(group('a mass'), 'metric')).toBe('g');
    expect(firstUnit(group('a mass'), 'inch_pound')).toBe('oz');
    expect(firstUnit(undefined, 'metric')).toBe('');
  });
});

describe('variables', () => {
  const cell = variables('set', { ...variable('tip_weight', 'g', '2'), title: 'Tip weight' }) as VariablesCell;
  const document = documentOf([cell, formula('sums', { all: '2 * tip_weight', lead: '1' })]);
  test('are put in, copied under a free name and taken out', () => {
    const copy = copyOfVariable(cell.rows[0]!, new Set(['tip_weight']));
    expect(copy).toMatchObject({ name: 'tip_weight_2', title: 'Tip weight, copy' });
    const both = withVariable(cell, copy, 'tip_weight');
    expect(both.rows.map((each) => each.name)).toEqual(['tip_weight', 'tip_weight_2']);
    expect(withoutVariable(both, 'tip_weight_2')).toEqual(cell);
  });
  test('take their name along with a new title, and the formulas', () => {
    const { changes, name } = retitleVariable(document, cell.rows[0]!, 'Lead');
    expect(name).toBe('lead_2');
    const after = applyChanges(document, changes).document;
    expect(cellsOf(after)[0]).toMatchObject({ rows: [{ name: 'lead_2', title: 'Lead' }] });
    expect(cellsOf(after)[1]).toMatchObject({ lines: [{ text: '2 * lead_2' }, {}] });
  });
});
