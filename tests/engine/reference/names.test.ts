import { expect, test } from 'vitest';
import { blocks } from '../../../engine/blocks/registry';
import { namesChapter } from '../../../engine/reference/names';

const { pieces } = namesChapter(blocks);
const rows = pieces.flatMap((piece) => (piece.kind === 'table' ? piece.rows : []));

test('a name stands once, with its symbol, unit and title', () => {
  expect(new Set(rows.map(([name]) => name)).size).toBe(rows.length);
  expect(rows).toContainEqual(['wing.root_chord', 'c_r', 'mm or in', 'Root chord']);
  expect(rows).toContainEqual(['parts.weighed_share', 'w', '%', 'Share weighed']);
  expect(rows).toContainEqual(['wing.aspect_ratio', 'A', 'plain number', 'Aspect ratio']);
});

test('the names of each role stand under a heading of their own, called by the piece', () => {
  const headings = pieces.flatMap((piece) => (piece.kind === 'heading' ? [piece] : []));
  expect(headings).toContainEqual({ kind: 'heading', id: 'names.wing', text: 'Wing' });
  expect(headings.at(-1)).toEqual({ kind: 'heading', id: 'names.parts', text: 'Weight and balance' });
  expect(headings.length).toBe(pieces.filter(({ kind }) => kind === 'table').length);
});

test('every result of every block can be found by its name', () => {
  const names = new Set(rows.map(([name]) => name));
  const missing = blocks.flatMap(({ kind, role = kind, results }) =>
    Object.entries(results).flatMap(([name, spec]) =>
      'curve' in spec || names.has(`${role}.${name}`) ? [] : [`${role}.${name}`],
    ),
  );
  expect(missing).toEqual([]);
});
