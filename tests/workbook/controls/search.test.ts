import { describe, expect, test } from 'vitest';
import { findOptions } from '../../../workbook/controls/pick/search';

const options = [
  { value: 'wing.span', title: 'Span, mm', group: 'Wing (sheet Model)' },
  { value: 'wing.area', title: 'Wing area, dm²', group: 'Wing (sheet Model)' },
  { value: 'tail.area', title: 'Tail area, dm²', group: 'Tail (sheet Model)' },
  { value: 'flight.pull', title: 'Line pull, N', group: 'Flight (sheet Model)' },
  { value: 'balance.cg', title: 'CG, mm', group: 'Balance (sheet Weights)' },
];
const values = (typed: string): readonly string[] => findOptions(options, typed).shown.map(({ value }) => value);

describe('what is typed narrows a list', () => {
  test('nothing typed leaves it whole and in order', () => {
    expect(values('  ')).toEqual(options.map(({ value }) => value));
  });

  test.each([
    ['area', ['wing.area', 'tail.area']],
    ['AREA tail', ['tail.area']],
    ['model flight', ['flight.pull']],
    ['wing', ['wing.area', 'wing.span']],
    ['cg', ['balance.cg']],
    ['tail', ['tail.area']],
    ['area wing', ['wing.area']],
    ['ull', []],
    ['CG, mm', ['balance.cg']],
  ])('"%s" by words of title and group, from their beginning', (typed, found) => {
    expect(values(typed)).toEqual(found);
  });

  test('also by what an option gives', () => {
    const woods = [
      { value: 'light', title: 'Balsa, contest grade', group: 'balsa', detail: '80\u00a0kg/m³' },
      { value: 'hard', title: 'Balsa, hard', group: 'balsa', detail: '200\u00a0kg/m³' },
    ];
    expect(findOptions(woods, 'balsa 200').shown.map(({ value }) => value)).toEqual(['hard']);
    expect(findOptions(woods, '80').shown.map(({ value }) => value)).toEqual(['light']);
  });

  test('as it is written before its words apart', () => {
    const pieces = ['3, Engine, and weights to balance with', '1, Weight and balance'].map((title) => ({
      value: title,
      title,
    }));
    expect(findOptions(pieces, 'weight and b').shown[0]!.title).toBe('1, Weight and balance');
  });

  test('whatever its accents', () => {
    const own = [{ value: 'a', title: 'Étendue' }];
    expect(findOptions(own, 'etend').shown).toEqual(own);
  });

  test('groups stay together, and only so many lines are shown', () => {
    const many = Array.from({ length: 100 }, (_, k) => ({
      value: `${k}`,
      title: `Rib ${k}`,
      group: k % 2 ? 'b' : 'a',
    }));
    const { shown, more } = findOptions(many, 'rib');
    expect(shown.map(({ group }) => group)).toEqual(Array(40).fill('a'));
    expect(more).toBe(60);
  });
});
