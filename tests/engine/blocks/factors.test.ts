import { describe, expect, it } from 'vitest';
import type { Document } from '../../../engine/sheet/document';
import { openLive } from '../../../engine/sheet/live';
import { cellsOf } from '../../../engine/sheet/sheets';
import { library } from '../../../engine/study/index';
import { onOneSheet } from '../sheet/one-sheet';
import { type Fields, faults, openWith, read, withEngine } from './engine-designs';

/** The design with texts typed into fields of one of its blocks. */
function withFields(document: Document, name: string, fields: Fields): Document {
  const cells = cellsOf(document).map((cell) =>
    cell.kind === 'model' && cell.name === name ? { ...cell, fields: { ...cell.fields, ...fields } } : cell,
  );
  return { ...document, sheets: onOneSheet(cells), baseline: {} };
}

describe('drag factor', () => {
  const plain = withEngine('two_stroke');
  const first = openLive(plain, library);
  const scaled = (factor: number): Document => {
    const rough = factor * read(first, 'wing.roughness_factor');
    const area = factor * read(first, 'body.drag_area') * 1e4;
    return withFields(withFields(plain, 'wing', { roughness_factor: `${rough}` }), 'body', {
      drag_area: `${area} cm²`,
    });
  };
  const both = [
    openLive(withFields(plain, 'flight', { drag_factor: '1.3' }), library),
    openLive(scaled(1.3), library),
  ] as const;

  it('scales the drag of wing, fuselage, tail and items alone', () => {
    // The tail's own row has no field to type; here it stands with the items.
    for (const path of ['flight.lap_time', 'flight.drag', 'flight.pull']) {
      expect(read(both[0], path) / read(both[1], path)).toBeCloseTo(1, 3);
    }
    expect(read(both[0], 'flight.lap_time')).toBeGreaterThan(1.03 * read(first, 'flight.lap_time'));
  });

  it('keeps the rows of the drag adding up to the whole', () => {
    const rows = ['wing', 'induced', 'body', 'tail', 'items', 'trim'].map((row) => read(both[0], `flight.drag_${row}`));
    expect(rows.reduce((sum, row) => sum + row, 0)).toBeCloseTo(read(both[0], 'flight.drag'), 9);
  });
});

describe('power factor', () => {
  it('of an engine by its data is both peaks times it', () => {
    const factor = openWith('two_stroke', { power_factor: '1.1' });
    const peaks = openWith('two_stroke', { peak_torque: '0.275 N·m', peak_power: '330 W' });
    for (const path of ['flight.lap_time', 'flight.shaft_speed']) {
      expect(read(factor, path)).toBeCloseTo(read(peaks, path), 9);
    }
  });

  it('of a thrust law is thrust and torque times it', () => {
    const factor = openWith('thrust_law', { power_factor: '1.1', torque: '0.2 N·m' });
    const typed = openWith('thrust_law', { static_thrust: '8.8 N', torque: '0.22 N·m' });
    for (const path of ['flight.lap_time', 'flight.torque']) {
      expect(read(factor, path)).toBeCloseTo(read(typed, path), 9);
    }
  });

  it.each(['tachometer', 'measured_lap'])('makes a model with %s faster', (kind) => {
    const [one, more] = [openWith(kind), openWith(kind, { power_factor: '1.1' })];
    expect(faults(more)).toEqual(faults(one));
    expect(read(more, 'flight.lap_time')).toBeLessThan(0.99 * read(one, 'flight.lap_time'));
    expect(read(more, 'flight.shaft_power')).toBeGreaterThan(1.05 * read(one, 'flight.shaft_power'));
  });
});
