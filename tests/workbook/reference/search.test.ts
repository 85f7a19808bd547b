import { describe, expect, test } from 'vitest';
import { makeReference } from '../../../engine/reference/index';
import { placesOf } from '../../../workbook/reference/places';
import { searchOf } from '../../../workbook/reference/search';

const chapters = makeReference();
const search = searchOf(chapters);
const first = (words: string) => search(words)[0]!;

describe('the search of the reference', () => {
  test.each([
    ['root chord', 'Root chord', 'field.wing.root_chord'],
    ['Wing', 'Wing', 'block.wing'],
    ['lap time', 'Lap time', 'result.flight.lap_time'],
    ['flight.lap_time', 'Lap time', 'result.flight.lap_time'],
    ['nutral point', 'Neutral point', 'result.balance.neutral_point'],
  ])('“%s” leads to “%s” first', (words, title, id) => {
    expect([first(words).title, first(words).id]).toEqual([title, id]);
  });

  test('the beginning of a word does', () => {
    expect(search('tip wei').map(({ title }) => title)).toContain('Tip weight for the wanted CG');
  });

  test('a word of a text finds it, and rows of the data too', () => {
    expect(search('lightning').map(({ id }) => id)).toContain('cautions');
    expect(search('balsa').map(({ chapter }) => chapter)).toContain('Materials');
  });

  test('all words count, and words that nothing has find nothing', () => {
    expect(search('root chord').length).toBeLessThan(search('chord').length);
    expect(search('chord qqqqq')).toEqual([]);
  });

  test('whatever it finds is a place of the reference, and no more than can be looked through', () => {
    const find = placesOf(chapters);
    for (const words of ['a', 'pull', 'the', 'mm', 'source']) {
      const found = search(words);
      expect(found.length).toBeLessThanOrEqual(40);
      for (const { id } of found) expect(find(`#${id}`).missing).toBeUndefined();
    }
  });
});
