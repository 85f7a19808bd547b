import { expect, test } from 'vitest';
import { functionNames } from '../../../engine/formula/index';
import { functions, units } from '../../../engine/index';
import { aboutAt, aboutFunction, aboutUnit, aboutWord, knownWords } from '../../../workbook/editor/about';
import { sentenceOf } from '../../../workbook/editor/said';
import { vocabularyFor } from './vocabulary';

/** What is said of the word at the bar. */
function said(marked: string): string | undefined {
  const about = aboutAt(marked.replace('|', ''), marked.indexOf('|'), vocabularyFor('share'));
  return about && sentenceOf(about);
}

test('a name is told with its title, its present value and what it is', () => {
  const sentence = 'flight.pull: Line pull, now 25.7 N. Tension of all lines together at the model.';
  for (const marked of ['2 * |flight.pull', '2 * fli|ght.pull', '2 * flight.pull|', '2 * flight.pull| / 3']) {
    expect(said(marked)).toBe(sentence);
  }
  expect(said('flight.lap|')).toBe('flight.lap: Lap time, without an answer now.');
});

test('a function is told with how many values it takes and what it does', () => {
  expect(said('sq|rt(4)')).toBe('sqrt( ): A function of 1 value. Square root.');
  expect(said('max|(1, 2)')).toBe('max( ): A function of 2 values or more. The greatest of them.');
});

test('a unit is told with its title, its dimension and its size in the everyday one', () => {
  expect(said('18.3 f|t')).toBe('ft: Foot, a length. 1\u00a0ft is 304.8\u00a0mm.');
  expect(said('20 °C|')).toBe('°C: Degree Celsius, a temperature.');
  expect(said('21 g|')).toBe('g: Gram, a mass.');
});

test('words are told, what nobody has named is not', () => {
  expect(said('1 < 2 a|nd 2 < 3')).toBe('and: A word between conditions. Both conditions hold.');
  expect(said('if 1 < 2 th|en 3 else 4')).toBe('then: A word of a condition. What holds where the condition does.');
  expect(said('2 * p|i')).toBe('pi: A number. Circumference of a circle over its diameter, 3.14159….');
  expect(said('2 * nob|ody')).toBeUndefined();
  expect(said('2 |* 3')).toBeUndefined();
});

test('every function, unit and word has something said of it', () => {
  for (const each of functions) expect(sentenceOf(aboutFunction(each, each.name))).toMatch(/^\w+\( \): .+\. .+\.$/);
  for (const unit of units) expect(aboutUnit(unit).is).toMatch(/^\p{L}.+, .+\.$/u);
  for (const word of knownWords) expect(aboutWord(word)?.doc).toMatch(/\.$/);
  expect(functionNames.length).toBeGreaterThan(10);
});
