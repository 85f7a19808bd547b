import { highlightTree, tagHighlighter, tags } from '@lezer/highlight';
import { expect, test } from 'vitest';
import { formulaParser } from '../../../engine/formula/index';

const highlighter = tagHighlighter([
  { tag: tags.number, class: 'number' },
  { tag: tags.unit, class: 'unit' },
  { tag: tags.invalid, class: 'wrong' },
  { tag: tags.variableName, class: 'name' },
  { tag: tags.function(tags.variableName), class: 'function' },
  { tag: tags.controlKeyword, class: 'word' },
  { tag: tags.operator, class: 'sign' },
  { tag: tags.paren, class: 'paren' },
  { tag: tags.separator, class: 'comma' },
]);

function colours(text: string): string[] {
  const found: string[] = [];
  highlightTree(formulaParser.parse(text), highlighter, (from, to, kind) => {
    found.push(`${kind} ${text.slice(from, to)}`);
  });
  return found;
}

test('the editor can tell the parts of a formula', () => {
  expect(colours('max(flight.pull, 3/32 in) - 5')).toEqual([
    'function max',
    'paren (',
    'name flight.pull',
    'comma ,',
    'number 3/32',
    'unit in',
    'paren )',
    'sign -',
    'number 5',
  ]);
  expect(colours('not a ≤ 2 furlong ? b : c')).toEqual([
    'sign not',
    'name a',
    'sign ≤',
    'number 2',
    'wrong furlong',
    'sign ?',
    'name b',
    'sign :',
    'name c',
  ]);
  expect(colours('if a < 4 ft 1" then b else c')).toEqual([
    'word if',
    'name a',
    'sign <',
    'number 4',
    'unit ft',
    'number 1',
    'unit "',
    'word then',
    'name b',
    'word else',
    'name c',
  ]);
});
