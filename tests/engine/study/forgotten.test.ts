import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { oftenForgotten } from '../../../engine/library/index';
import type { Document, PartsCell } from '../../../engine/sheet/document';
import { openText } from '../../../engine/sheet/file';
import { faultsOfLive, openLive } from '../../../engine/sheet/live';
import { nameFault } from '../../../engine/sheet/names';
import { cellsOf } from '../../../engine/sheet/sheets';
import { forgottenIn } from '../../../engine/study/design/forgotten';
import { library } from '../../../engine/study/index';
import { onOneSheet } from '../sheet/one-sheet';

const file = new URL('../../designs/quern.tetherwright.json', import.meta.url);
const opened = openText(readFileSync(file, 'utf8'));
if (!opened.ok) throw new Error(opened.message);
const demo = opened.document;
const parts = cellsOf(demo).find((cell): cell is PartsCell => cell.kind === 'parts')!;

const withParts = (change: (cell: PartsCell) => PartsCell, document = demo): Document => ({
  ...document,
  sheets: onOneSheet(cellsOf(document).map((cell) => (cell.kind === 'parts' ? change(cell) : cell))),
});
const read = (document: Document, path: string): number => {
  const { compiled, state } = openLive(document, library);
  return state.m[compiled.program.slotOf.get(path)!]!;
};
const askedOf = (document: Document) => forgottenIn(openLive(document, library), 'parts', library);

describe('what is often forgotten', () => {
  it('is what no part of the table names', () => {
    const names = askedOf(demo).map(({ part }) => part.name);
    expect(names).toContain('fuel_tubing');
    expect(names).toContain('leadout_ends');
    // The demo has its hinges, its glue and its engine screws.
    for (const there of ['elevator_hinges', 'wing_glue', 'engine_screws', 'battery_strap']) {
      expect(names).not.toContain(there);
    }
  });

  it('moves the CG by what it says, once it is added', () => {
    for (const { part, shiftX, shiftY } of askedOf(demo)) {
      const added = withParts((cell) => ({ ...cell, rows: [...cell.rows, part] }));
      expect(faultsOfLive(openLive(added, library)), part.name).toEqual([]);
      expect(read(added, 'parts.x') - read(demo, 'parts.x'), part.name).toBeCloseTo(shiftX, 12);
      expect(read(added, 'parts.y') - read(demo, 'parts.y'), part.name).toBeCloseTo(shiftY, 12);
    }
  });

  it('is asked for again when its part is taken out, and no longer once it is added', () => {
    const without = withParts((cell) => ({ ...cell, rows: cell.rows.filter(({ name }) => name !== 'hinges') }));
    const hinges = askedOf(without).find(({ part }) => part.name === 'elevator_hinges')!;
    expect(hinges.part.fields).toEqual({
      mass: '3 g',
      x: 'tail.edge + tail.root_chord × (1 - tail.elevator_share)',
      y: '0 mm',
      z: 'tail.height',
    });
    // 3 g on an arm of about 0.46 m in a model of about 0.85 kg.
    expect(hinges.shiftX).toBeGreaterThan(0.0014);
    expect(hinges.shiftX).toBeLessThan(0.0018);
    const again = withParts((cell) => ({ ...cell, rows: [...cell.rows, hinges.part] }), without);
    expect(askedOf(again).map(({ part }) => part.name)).not.toContain('elevator_hinges');
  });

  it('calls blocks what this sheet calls them', () => {
    const text = JSON.stringify(demo)
      .replaceAll('leadouts.', 'guides.')
      .replaceAll('"leadouts","title"', '"guides","title"');
    const renamed = JSON.parse(text) as Document;
    const document = {
      ...renamed,
      sheets: onOneSheet(
        cellsOf(renamed).map((cell) => (cell.name === 'leadouts' ? { ...cell, name: 'guides' } : cell)),
      ),
    };
    const ends = askedOf(document).find(({ part }) => part.name === 'leadout_ends')!;
    expect(ends.part.fields.x).toBe('guides.guide_x');
    expect(ends.x).toBeCloseTo(0.062, 12);
  });

  it('stands at the datum, without a shift, where the sheet does not say where it would be', () => {
    const bare = { ...demo, sheets: onOneSheet([{ ...parts, rows: [] }]), figures: [], baseline: undefined };
    const glue = askedOf(bare).find(({ part }) => part.name === 'wing_glue')!;
    expect(glue.part.fields).toEqual({ mass: '10 g', x: '0 mm' });
    expect([glue.x, glue.shiftX, glue.shiftY]).toEqual([Number.NaN, Number.NaN, Number.NaN]);
    const added = { ...bare, sheets: onOneSheet([{ ...parts, rows: [glue.part] }]) };
    expect(faultsOfLive(openLive(added, library))).toEqual([]);
  });

  it('is nothing for what is no table of parts', () => {
    expect(forgottenIn(openLive(demo, library), 'wing', library)).toEqual([]);
  });
});

describe('the rows of the data file', () => {
  it('are all marked as common practice, and can stand in any table', () => {
    for (const row of oftenForgotten) {
      expect(row.source, row.name).toMatch(/^Common practice, no source/);
      expect(row.memory, row.name).toBe(true);
      expect(nameFault(row.name), row.name).toBeUndefined();
      expect(row.mass, row.name).toBeGreaterThan(0);
      // Each is known again by its own title.
      expect(
        row.saidBy.some((word) => row.title.toLowerCase().includes(word)),
        row.name,
      ).toBe(true);
    }
  });
});
