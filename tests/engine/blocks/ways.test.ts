import { describe, expect, it, test } from 'vitest';
import { ringColumns } from '../../../engine/blocks/lap/ring';
import { blocks } from '../../../engine/blocks/registry';
import { traceColumns } from '../../../engine/study/describe/blocks';

const told = blocks.flatMap(({ kind, results, traces = {} }) => [
  ...Object.entries(results).map(([name, spec]) => ({ name: `${kind}.${name}`, spec })),
  ...Object.entries(traces).flatMap(([trace, { columns }]) =>
    Object.entries(columns).map(([name, spec]) => ({ name: `${kind}.${trace}.${name}`, spec })),
  ),
]);
const twoWays = told.flatMap(({ name, spec }) =>
  'ways' in spec && spec.ways ? [{ name, spec, ways: spec.ways }] : [],
);

describe('a number that says its way in words', () => {
  it('is the nose angle and the lean of the wings wherever they stand', () => {
    expect(new Set(twoWays.map(({ name }) => name))).toSatisfy((names: Set<string>) =>
      ['flight.nose_out', 'flight.outboard_low', 'lap.ring.nose_out', 'lap.ring.outboard_low'].every((each) =>
        names.has(each),
      ),
    );
  });
  test.each(twoWays.map(({ name, spec, ways }) => [name, spec, ways] as const))(
    'has no way in its title and no sign in its doc: %s',
    (_, { title, doc }, ways) => {
      expect(ways[0]).not.toBe(ways[1]);
      for (const way of ways.slice(0, 2)) expect(title.toLowerCase().split(/[ ,]/)).not.toContain(way);
      expect(doc).not.toMatch(/positive|negative/i);
    },
  );
});

test('the columns of a trace carry their ways to the page', () => {
  const columns = traceColumns({ title: '', doc: '', columns: ringColumns, run: () => undefined }, 'metric');
  expect(columns.map(({ name, ways }) => [name, ways])).toEqual([
    ['azimuth', undefined],
    ['pull', undefined],
    ['speed', undefined],
    ['nose_out', ['out', 'in', 'straight']],
    ['outboard_low', ['low', 'high', 'level']],
    ['bearing', undefined],
  ]);
});
