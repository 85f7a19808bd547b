import { CompletionContext, type CompletionResult } from '@codemirror/autocomplete';
import { EditorState } from '@codemirror/state';
import { expect, test } from 'vitest';
import { proposalsFrom } from '../../../workbook/editor/proposals';
import { vocabularyFor } from './vocabulary';

/** What is proposed where the bar stands in the text. */
function ask(marked: string, { path = 'share', explicit = false } = {}): CompletionResult | null {
  const at = marked.indexOf('|');
  const state = EditorState.create({ doc: marked.replace('|', '') });
  const source = proposalsFrom(vocabularyFor(path));
  return source(new CompletionContext(state, at, explicit)) as CompletionResult | null;
}
const labels = (result: CompletionResult | null): string[] => (result?.options ?? []).map(({ label }) => label);

test('names come by how they begin, by a piece of them, by their title; ends of slides last', () => {
  const result = ask('2 * pul|');
  expect(labels(result)).toEqual(['flight.pull', 'flight.pull_at_handle', 'pull_sweep.axis.low']);
  expect(result).toMatchObject({ from: 4, to: 7 });
  expect(labels(ask('breaking|'))).toEqual(['lines.breaking_load']);
  expect(labels(ask('handle|'))).toEqual(['flight.pull_at_handle']);
  expect(labels(ask('la|'))).toEqual(['flight.lap']);
});

test('behind a dot come the results of that block, and the rest of a name behind the caret is replaced', () => {
  const result = ask('1 + flight.|lap / 2');
  expect(labels(result)).toEqual(['flight.pull', 'flight.pull_at_handle', 'flight.lap']);
  expect(result).toMatchObject({ from: 4, to: 14 });
});

test('names of the wanted dimension come first', () => {
  expect(labels(ask('|', { path: 'tip_weight', explicit: true })).slice(0, 2)).toEqual(['line_length', 'flight.pull']);
  expect(labels(ask('|', { path: 'lines.breaking_load', explicit: true })).slice(0, 2)).toEqual([
    'flight.pull',
    'flight.pull_at_handle',
  ]);
});

test('neither a curve nor the text itself is proposed', () => {
  const all = labels(ask('|', { path: 'tip_weight', explicit: true }));
  expect(all).not.toContain('engine.thrust');
  expect(all).not.toContain('tip_weight');
  expect(all).toContain('line_length');
});

test('functions say what they do and are written with their parentheses', () => {
  const found = ask('3 + sq|')?.options.find(({ label }) => label === 'sqrt');
  expect(found).toMatchObject({ displayLabel: 'sqrt( )', detail: 'Square root.' });
  expect(typeof found?.apply).toBe('function');
});

test('words between conditions are proposed too', () => {
  expect(labels(ask('1 < 2 an|'))).toContain('and');
  expect(labels(ask('flight.lap < tip_weight o|'))).toEqual(['or']);
  expect(labels(ask('no|'))).toContain('not');
});

test('the words of a condition are proposed where they can stand', () => {
  expect(labels(ask('i|'))).toContain('if');
  expect(labels(ask('if flight.lap < 2 th|'))).toContain('then');
  expect(labels(ask('if flight.lap < 2 s then tip_weight el|'))[0]).toBe('else');
  expect(labels(ask('if |', { explicit: true }))).toContain('flight.pull');
  expect(ask('flight.pull |', { explicit: true })).toBeNull();
});

test('behind a number come units, those of the wanted dimension first', () => {
  const mass = labels(ask('12 |', { path: 'tip_weight', explicit: true }));
  expect(mass.slice(0, 2)).toEqual(['mg', 'g']);
  expect(mass).toContain('mm');
  expect(mass).not.toContain('flight.pull');
  expect(labels(ask('12 m|', { path: 'line_length', explicit: true }))[0]).toBe('mm');
  expect(ask('1 1/2 i|', { path: 'line_length' })).toMatchObject({ from: 6, to: 7 });
  expect(ask('1 1/2 in|', { path: 'line_length' })).toBeNull();
  expect(labels(ask('1 1/2 i|', { path: 'line_length' }))[0]).toBe('in');
});

test('a unit is found by its title and by another spelling of it', () => {
  expect(labels(ask('3 foo|'))[0]).toBe('ft');
  expect(labels(ask('3 c|'))).toContain('cm³');
});

test('a unit of more than a word goes on over its signs, a division by a name does not', () => {
  expect(labels(ask('3 km/|'))).toContain('km/h');
  expect(labels(ask('3 m / li|'))).toEqual(expect.arrayContaining(['line_length']));
});

test('nothing comes up of itself where nothing is begun, or where all is written', () => {
  expect(ask('|')).toBeNull();
  expect(ask('12 |')).toBeNull();
  expect(ask('12|', { path: 'tip_weight' })).toBeNull();
  expect(ask('12 g|', { path: 'tip_weight' })).toBeNull();
  expect(ask('12 mm|', { path: 'tip_weight' })).toBeNull();
  expect(ask('flight.lap|')).toBeNull();
  expect(ask('flight.lap |', { explicit: true })).toBeNull();
  expect(ask('nothing_like_it|')).toBeNull();
});

test('beside a choice come its options', () => {
  expect(labels(ask('tail_stock = b|'))[0]).toBe('balsa');
  expect(labels(ask('|', { path: 'tail_stock', explicit: true })).slice(0, 2)).toEqual(['balsa', 'light_ply']);
});
