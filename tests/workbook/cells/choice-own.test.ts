import { expect, test } from 'vitest';
import type { ChoiceCell } from '../../../engine/index';
import { copyOf, newOption, withChangedColumn, withColumn, withoutColumn } from '../../../workbook/cells/choice/edits';

const cell: ChoiceCell = {
  kind: 'choice',
  id: 'c1',
  name: 'cord_pick',
  title: 'Cord',
  of: 'numbers',
  columns: [{ name: 'size', unit: 'mm', title: 'Size' }],
  options: [{ name: 'thin', title: 'Thin', pattern: 'plain', values: { size: '0.3 mm' } }],
  text: 'thin',
};

test('a new option is filled like the last one, the first one with nothing', () => {
  expect(newOption(cell)).toEqual({ name: 'option', title: 'Option 2', pattern: 'plain', values: { size: '0.3 mm' } });
  expect(newOption({ ...cell, options: [] })).toEqual({
    name: 'option',
    title: 'Option 1',
    pattern: 'plain',
    values: { size: '0 mm' },
  });
  expect(newOption({ ...cell, of: 'stack', columns: [], options: [] }).layers).toEqual([]);
});

test('a copy has a name of its own', () => {
  expect(copyOf(cell.options[0]!, cell.options)).toMatchObject({ name: 'thin_2', title: 'Thin, copy' });
});

test('a number comes into every option and goes out of every option', () => {
  const more = withColumn(cell);
  expect(more.columns.map(({ name }) => name)).toEqual(['size', 'number']);
  expect(more.options[0]!.values).toEqual({ size: '0.3 mm', number: '0' });
  expect(withColumn(more).columns.at(-1)!.name).toBe('number_2');
  expect(withoutColumn(more, 'number')).toEqual(cell);
  expect(withChangedColumn(cell, 0, { unit: 'in' }).columns[0]).toEqual({ name: 'size', unit: 'in', title: 'Size' });
});
