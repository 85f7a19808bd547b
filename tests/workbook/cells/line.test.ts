import { expect, test } from 'vitest';
import { describeBlock } from '../../../engine/study/describe/blocks';
import { library } from '../../../engine/study/library';
import { lineOf } from '../../../workbook/cells/line';

/** What a closed piece of this kind says while every number reads "1". */
function said(kind: string): string {
  const block = describeBlock(library.blocks.find((each) => each.kind === kind)!);
  const titles = new Map([...block.fields, ...block.results].map(({ name, title }) => [`it.${name}`, title]));
  const sheet = {
    shown: () => '1',
    value: () => 1,
    name: (path: string) => ({ title: titles.get(path) ?? '' }),
    optionTitle: () => undefined,
    blockNamed: () => block,
    under: () => undefined,
  } as unknown as Parameters<typeof lineOf>[1];
  return lineOf({ kind: 'model', id: 'c1', name: 'it', title: 'It', of: kind, fields: {} }, sheet).words;
}

test('a closed piece of the model names its numbers where they would say little alone', () => {
  expect(said('wing')).toBe('1, 1, 1');
  expect(said('race')).toBe('race time 1, stops 1');
  expect(said('launch')).toBe('time of the run 1, least pull in the run 1');
  expect(said('ballast')).toBe('engine to move 1, nose weight for the wanted CG 1, tip weight for the wanted CG 1');
});
