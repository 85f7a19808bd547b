import { expect, test } from 'vitest';
import { blocks } from '../../../engine/blocks/registry';
import { namesChapter } from '../../../engine/reference/names';

const table = namesChapter(blocks).pieces.find((piece) => piece.kind === 'table');
const rows = table?.kind === 'table' ? table.rows : [];

test('a name stands once, with its symbol, unit and title', () => {
  expect(new Set(rows.map(([name]) => name)).size).toBe(rows.length);
  expect(rows).toContainEqual(['wing.root_chord', 'c_r', 'mm or in', 'Root chord']);
  expect(rows).toContainEqual(['parts.weighed_share', 'w', '%', 'Share weighed']);
  expect(rows).toContainEqual(['wing.aspect_ratio', 'A', 'plain number', 'Aspect ratio']);
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
