import * as v from 'valibot';
import { FORCE, LENGTH, ONE } from '../../units/index';
import type { LineSet, LogCell } from '../document';
import type { Builder } from '../specs';
import type { Rewrite, Text } from './kind';
import { mapFields, mapRows, withRow } from './rows';

/** Path of a set of lines: its texts are `flown.set1.diameter`, `flown.set1.length`, `flown.set1.flights`. */
export const lineSetPath = (cell: Pick<LogCell, 'name'>, k: number): string => `${cell.name}.set${k + 1}`;
/** Path of the load of a pull test of a set. */
export const pullTestPath = (cell: Pick<LogCell, 'name'>, k: number, test: number): string =>
  `${lineSetPath(cell, k)}.test${test + 1}`;

export const lineSetSchema = v.strictObject({
  name: v.string(),
  diameter: v.string(),
  length: v.string(),
  flights: v.string(),
  pull_tests: v.array(v.strictObject({ date: v.string(), load: v.string() })),
  kinks: v.string(),
  retired: v.string(),
});

const NUMBERS = ['diameter', 'length', 'flights'] as const;

export const lineSetTexts = (cell: LogCell): Text[] =>
  cell.line_sets.flatMap((set, k) => [
    ...NUMBERS.map((name) => ({ path: `${lineSetPath(cell, k)}.${name}`, text: set[name] })),
    ...set.pull_tests.map(({ load }, test) => ({ path: pullTestPath(cell, k, test), text: load })),
  ]);

export function putInLineSet(cell: LogCell, path: string, text: string): readonly LineSet[] | undefined {
  for (const [k, set] of cell.line_sets.entries()) {
    for (const name of NUMBERS) {
      if (path === `${lineSetPath(cell, k)}.${name}`) return withRow(cell.line_sets, k, { ...set, [name]: text });
    }
    for (const [at, test] of set.pull_tests.entries()) {
      if (path !== pullTestPath(cell, k, at)) continue;
      const tests = withRow(set.pull_tests, at, { ...test, load: text });
      return withRow(cell.line_sets, k, { ...set, pull_tests: tests });
    }
  }
  return undefined;
}

export const rewriteLineSet = (set: LineSet, { formula }: Rewrite): LineSet =>
  mapFields(set, {
    ...Object.fromEntries(NUMBERS.map((name) => [name, formula(set[name])])),
    pull_tests: mapRows(set.pull_tests, (test) => mapFields(test, { load: formula(test.load) })),
  });

const SIZES = {
  diameter: { title: 'Diameter', unit: 'mm', wants: { dimension: LENGTH } },
  length: { title: 'Length as made up', unit: 'm', wants: { dimension: LENGTH } },
  flights: { title: 'Flights before this log', unit: '', wants: { dimension: ONE } },
} as const;

export function layLineSets(cell: LogCell, builder: Builder): void {
  for (const [k, set] of cell.line_sets.entries()) {
    const of = set.name || `line set ${k + 1}`;
    const rest = { cell: cell.id, kind: 'limit', detail: true, blank: Number.NaN } as const;
    for (const name of NUMBERS) {
      const { title, ...size } = SIZES[name];
      const path = `${lineSetPath(cell, k)}.${name}`;
      builder.text({ ...rest, ...size, path, text: set[name], title: `${title} of ${of}`, doc: 'Blank: not said.' });
    }
    for (const [at, { load }] of set.pull_tests.entries()) {
      builder.text({
        ...{ ...rest, path: pullTestPath(cell, k, at), text: load, unit: 'N', wants: { dimension: FORCE } },
        ...{ title: `Load of pull test ${at + 1} of ${of}`, doc: 'What the whole system held.' },
      });
    }
  }
}
