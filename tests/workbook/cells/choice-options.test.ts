import { expect, test } from 'vitest';
import type { BlockCell, ChoiceCell, FieldDescription, TableDescription } from '../../../engine/index';
import { feedingTexts, withOption, withoutOption } from '../../../workbook/cells/choice/options';

const cell: ChoiceCell = {
  kind: 'choice',
  id: 'c1',
  name: 'cord_pick',
  title: 'Cord',
  of: 'library',
  table: 'cords',
  columns: [],
  options: [],
  text: '',
};
const thin = { name: 'thin_cord', title: 'Thin cord' };
const thick = { name: 'thick_cord', title: 'Thick cord' };

test('the first row is picked at once, and another one when it goes', () => {
  const one = withOption(cell, thin);
  expect(one.text).toBe('thin_cord');
  expect(one.options).toEqual([{ ...thin, pattern: 'plain' }]);
  const two = withOption(one, thick);
  expect(two.text).toBe('thin_cord');
  expect(withoutOption(two, 'thick_cord')).toEqual(one);
  expect(withoutOption(two, 'thin_cord').text).toBe('thick_cord');
  expect(withoutOption(one, 'thin_cord').text).toBe('');
});

test('a block follows the choice in the fields that it has, and only where it does not yet', () => {
  const columns = ['weave', 'diameter', 'strength'].map((name) => ({ name }));
  const fields = ['diameter', 'strength', 'length'].map((name) => ({ name }) as FieldDescription);
  const block = { kind: 'model', name: 'cord', fields: { diameter: '3 mm', strength: 'cord_pick.strength' } };
  const texts = feedingTexts(cell, block as unknown as BlockCell, { columns } as unknown as TableDescription, fields);
  expect(texts).toEqual([['cord.diameter', 'cord_pick.diameter']]);
});
