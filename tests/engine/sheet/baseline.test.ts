import { describe, expect, test } from 'vitest';
import { baselineOf, isCompared } from '../../../engine/sheet/baseline';
import { differencesOf, movedSince } from '../../../engine/sheet/differences';
import type { Document, PartsCell } from '../../../engine/sheet/document';
import { openText, serialise } from '../../../engine/sheet/file';
import { keepingBaseline } from '../../../engine/sheet/keep-baseline';
import { openLive } from '../../../engine/sheet/live';
import { rename } from '../../../engine/sheet/rename';
import { cellsOf } from '../../../engine/sheet/sheets';
import { applyChanges, type Change } from '../../../engine/sheet/transaction';
import { randomEdit } from './edits';
import { randomFrom } from './random';
import { blockOf, library, smallDesign } from './small';

const start = (): Document => ({ ...smallDesign(), baseline: {} });
const edited = (document: Document, ...changes: Change[]): Document =>
  applyChanges(document, keepingBaseline(document, changes)).document;
const partsOf = (document: Document): PartsCell =>
  cellsOf(document).find((cell): cell is PartsCell => cell.kind === 'parts')!;
const withoutPart = (document: Document, name: string): Change => {
  const cell = partsOf(document);
  return { change: 'cell', cell: { ...cell, rows: cell.rows.filter((row) => row.name !== name) } };
};

/** Mass, CG and pull of the baseline, whatever its table is called by now. */
function figuresOf(document: Document): readonly number[] {
  const then = baselineOf(document)!;
  const { compiled, state } = openLive(then, library);
  const named = (id: string): string => cellsOf(then).find((cell) => cell.id === id)?.name ?? 'gone';
  const paths = [`${named('id_parts')}.mass`, `${named('id_parts')}.x`, `${named('id_lap')}.pull`];
  return paths.map((path) => state.m[compiled.program.slotOf.get(path) ?? -1] ?? Number.NaN);
}
const FIGURES = figuresOf(start());

describe('the baseline outlives an edit of structure', () => {
  test('that removes a part: it still weighs there, and is told', () => {
    const after = edited(start(), withoutPart(start(), 'tip'));
    expect(figuresOf(after)).toEqual(FIGURES);
    expect(movedSince(after)).toEqual({ removed: ['tip'], added: [] });
    expect(differencesOf(after)).toEqual([]);
  });
  test('that takes away what it needs, and puts another in its place', () => {
    const bare = edited(start(), { change: 'remove', id: 'id_motor' });
    expect(figuresOf(bare)).toEqual(FIGURES);
    const other = { ...blockOf('motor', { pull: '9 N' }, 'other'), id: 'id_other', title: 'Other' };
    const after = edited(bare, { change: 'insert', sheet: 's1', at: 0, cell: other });
    expect(figuresOf(after)).toEqual(FIGURES);
    expect(movedSince(after).added).toEqual(['Other']);
    expect(movedSince(after).removed).toHaveLength(1);
  });
  test('that removes a variable which only the baseline names', () => {
    const typed = edited(
      start(),
      { change: 'text', path: 'motor.station', text: '-150' },
      { change: 'text', path: 'parts.engine.x', text: '-150' },
    );
    const variables = cellsOf(typed).find((cell) => cell.id === 'id_set_these')!;
    if (variables.kind !== 'variables') throw new Error();
    const rows = variables.rows.filter((row) => row.name !== 'engine_station');
    const after = edited(typed, { change: 'cell', cell: { ...variables, rows } });
    expect(figuresOf(after)).toEqual(FIGURES);
    expect(differencesOf(after)).toEqual([
      { path: 'motor.station', before: 'engine_station', now: '-150' },
      { path: 'parts.engine.x', before: 'engine_station', now: '-150' },
    ]);
  });
  test('and goes on comparing what both have, under new names too', () => {
    const after = edited(edited(start(), withoutPart(start(), 'tip')), {
      ...{ change: 'text', path: 'cord.length', text: '17 m' },
    });
    const renaming = rename(after, 'cord', 'string');
    const renamed = edited(after, ...(renaming.ok ? renaming.changes : []));
    expect(differencesOf(renamed)).toEqual([{ path: 'string.length', before: 'cord_length', now: '17 m' }]);
    expect(figuresOf(renamed)).toEqual(FIGURES);
  });
  for (const seed of [51, 52, 53, 54, 55, 56]) {
    test(`thirty random edits leave it the design that it was, and are taken back to the byte (seed ${seed})`, () => {
      const random = randomFrom(seed);
      let document = start();
      const inverses: (readonly Change[])[] = [];
      for (let k = 0; k < 30; k++) {
        const edit = randomEdit(document, random);
        const done = applyChanges(document, keepingBaseline(document, edit.changes), { frozen: true });
        document = done.document;
        inverses.unshift(done.inverse);
        expect(figuresOf(document), edit.says).toEqual(FIGURES);
      }
      expect(openText(serialise(document))).toEqual({ ok: true, document });
      expect(serialise(applyChanges(document, inverses.flat()).document)).toBe(serialise(start()));
    });
  }
});

describe('the baseline shares its structure with the design', () => {
  const shares = (...changes: Change[]) => expect(edited(start(), ...changes).baseline_design).toBeUndefined();
  test('as long as only texts, names, titles, places and what stands beside it are edited', () => {
    shares({ change: 'text', path: 'lap.height', text: '2 m' });
    shares({ change: 'move', id: 'id_cord', sheet: 's1', to: 0 });
    shares({ change: 'remove', id: 'id_cg_chart' });
    shares({ change: 'insert_sheet', at: 0, sheet: { id: 's2', title: 'New', pieces: [] } });
    shares({ change: 'cell', cell: { ...blockOf('cord', { length: 'cord_length' }), title: 'Other' } });
    const renaming = rename(start(), 'tip_weight', 'lead');
    shares(...(renaming.ok ? renaming.changes : []));
  });
  test('and nothing is kept where there is no baseline', () => {
    const changes: Change[] = [{ change: 'remove', id: 'id_motor' }];
    expect(keepingBaseline(smallDesign(), changes)).toBe(changes);
  });
});

test('ranges of charts and slides, notes and studies are not compared', () => {
  const paths = [
    'cg_sweep.axis2.low',
    'tip_weight.high',
    'tip_weight',
    'cg_band.low',
    'lap.height',
    'soft_wood.density',
  ];
  expect(paths.filter((path) => isCompared(start(), path))).toEqual(paths.slice(2));
  const after = edited(
    start(),
    { change: 'text', path: 'cg_sweep.axis2.low', text: '-180 mm' },
    { change: 'text', path: 'tip_weight.high', text: '60 g' },
    { change: 'text', path: 'tip_weight', text: '30 g' },
  );
  expect(after.baseline).toEqual({ tip_weight: '21 g' });
});
