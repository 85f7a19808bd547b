import { describe, expect, test } from 'vitest';
import type { ChartCell, Document } from '../../../engine/sheet/document';
import { openLive } from '../../../engine/sheet/live';
import { textAt } from '../../../engine/sheet/paths';
import { rename } from '../../../engine/sheet/rename';
import { faultsOf } from '../../../engine/sheet/sentences';
import { cellsOf } from '../../../engine/sheet/sheets';
import { applyChanges } from '../../../engine/sheet/transaction';
import { onOneSheet } from './one-sheet';
import { blockOf, documentOf, formula, library, smallDesign, withCell } from './small';

function renamed(document: Document, path: string, to: string): Document {
  const renaming = rename(document, path, to);
  if (!renaming.ok) throw new Error(renaming.message);
  const { document: after, inverse } = applyChanges(document, renaming.changes);
  expect(applyChanges(after, inverse).document).toEqual(document);
  return after;
}

/** Values by path, NaN included, without those whose path has changed. */
function valuesOf(document: Document): Map<string, number> {
  const { compiled, state } = openLive(document, library);
  expect(faultsOf(compiled, state)).toEqual([]);
  return new Map(compiled.names.map((name) => [name.path, state.m[name.slot]!]));
}

describe('renaming rewrites what names the thing, and no number changes', () => {
  const own = [{ table: 'materials', name: 'foam', title: 'Foam', source: 'weighed', values: { density: '30' } }];
  const design: Document = {
    ...smallDesign(),
    sheets: onOneSheet([
      ...cellsOf(smallDesign()),
      formula('more', {
        thick: 'cord_set.thick.strength',
        heavy: 'tail_stock = faced ? 1 : 2',
        twice: '2 × parts.fin.mass + 0 m³ × foam.density',
      }),
    ]),
    rows: own,
    figures: ['parts.x', 'lap.pull'],
    baseline: { tip_weight: '2 × 3 g', tail_stock: 'faced', 'parts.fin.weighed': '12 g' },
  };
  const cases: readonly (readonly [path: string, to: string, texts: Readonly<Record<string, string>>])[] = [
    ['engine_station', 'bench', { 'motor.station': 'bench', 'parts.engine.x': 'bench' }],
    ['tip_weight', 'lead', { 'parts.tip.mass': 'lead' }],
    ['tail_stock', 'stock', { 'parts.stab.stack': 'stock', heavy: 'stock = faced ? 1 : 2' }],
    ['tail_stock.faced', 'sandwich', { heavy: 'tail_stock = sandwich ? 1 : 2', 'tail_stock.sandwich.core': '3 mm' }],
    ['tail_stock.soft', 'plain', { tail_stock: 'plain' }],
    ['tail_stock.faced.glue', 'film', { 'tail_stock.faced.film': '40 g/m²' }],
    [
      'cord_set.strength',
      'breaking',
      { reserve: 'cord_set.breaking / lap.pull', thick: 'cord_set.thick.breaking', 'cord_set.thin.breaking': '120 N' },
    ],
    ['parts', 'list', { tail_share: 'list.stab.mass / list.mass', cg_band: 'list.x' }],
    ['parts.fin', 'rudder', { twice: '2 × parts.rudder.mass + 0 m³ × foam.density' }],
    ['foam', 'core', { twice: '2 × parts.fin.mass + 0 m³ × core.density', 'core.density': '30' }],
    ['lap', 'flight', { tight: 'flight.pull > 10 N' }],
    ['reserve', 'margin', { margin: 'cord_set.strength / lap.pull' }],
    ['cg_sweep', 'station_sweep', {}],
    ['words', 'brief', {}],
  ];
  for (const [path, to, texts] of cases) {
    test(`${path} → ${to}`, () => {
      const after = renamed(design, path, to);
      for (const [at, text] of Object.entries(texts)) expect(textAt(after, at), at).toBe(text);
      const before = valuesOf(design);
      const moved = `${path.slice(0, path.lastIndexOf('.') + 1)}${to}`;
      for (const [at, value] of valuesOf(after)) {
        const column = at.replace(/^cord_set\.(thin|thick)\.breaking$/, 'cord_set.$1.strength');
        const was = at === moved || at.startsWith(`${moved}.`) ? path + at.slice(moved.length) : column;
        expect(value, at).toBe(before.get(was));
      }
    });
  }
  test('in sweeps, charts, figures and the baseline too', () => {
    const after = renamed(renamed(renamed(design, 'tail_stock', 'stock'), 'parts', 'list'), 'cg_sweep', 'run');
    expect(cellsOf(after).find((cell) => cell.id === 'id_cg_sweep')).toMatchObject({
      axes: [{ of: 'stock' }, { of: 'engine_station' }],
      wanted: ['list.x', 'lap.pull'],
    });
    expect(cellsOf(after).find((cell) => cell.id === 'id_cg_chart')).toMatchObject({
      series: 'run',
      up: ['list.x'],
      lines: 'stock',
    });
    expect(after.figures).toEqual(['list.x', 'lap.pull']);
    expect(after.baseline).toEqual({ tip_weight: '2 × 3 g', stock: 'faced', 'list.fin.weighed': '12 g' });
    expect(renamed(design, 'tail_stock.faced', 'sandwich').baseline?.tail_stock).toBe('sandwich');
  });
});

test('a chart of what runs along something follows its block, and no variable that is called like a column', () => {
  const design = smallDesign();
  const chart = cellsOf(design).find((cell) => cell.id === 'id_cg_chart') as ChartCell;
  const along: ChartCell = {
    ...chart,
    chart: 'along',
    series: '',
    of: 'lap.ring',
    across: 'tip_weight',
    up: ['speed'],
  };
  const cells = cellsOf(design).map((cell) => (cell.id === 'id_cg_chart' ? along : cell));
  const after = renamed(renamed({ ...design, sheets: onOneSheet(cells) }, 'lap', 'circuit'), 'tip_weight', 'lead');
  expect(cellsOf(after).find((cell) => cell.id === 'id_cg_chart')).toEqual({ ...along, of: 'circuit.ring' });
});

test('a chart of parts follows its table and its checks, and no variable that is called like a number of the parts', () => {
  const design = smallDesign();
  const chart = cellsOf(design).find((cell) => cell.id === 'id_cg_chart') as ChartCell;
  const bars: ChartCell = { ...chart, chart: 'bars', series: '', of: 'parts', up: ['mass'], checks: ['cg_band'] };
  const before = withCell(design, bars);
  const after = renamed(renamed(renamed(before, 'parts', 'list'), 'cg_band', 'band'), 'tip_weight', 'mass');
  expect(cellsOf(after).find((cell) => cell.id === 'id_cg_chart')).toEqual({ ...bars, of: 'list', checks: ['band'] });
  expect(cellsOf(renamed(after, 'mass', 'lead')).find((cell) => cell.id === 'id_cg_chart')).toMatchObject({
    up: ['mass'],
  });
});

test('what is not touched stays the same cell', () => {
  const design = smallDesign();
  const renaming = rename(design, 'tip_weight', 'lead');
  expect(renaming.ok && renaming.changes.map((change) => change.change === 'cell' && change.cell.id)).toEqual([
    'id_set_these',
    'id_parts',
  ]);
});

test('an option is renamed where its own choice says it, not where another word is the same', () => {
  const design = documentOf([
    cellsOf(smallDesign()).find((cell) => cell.name === 'tail_stock')!,
    formula('lines', { soft: '3', a: 'tail_stock = soft ? soft : 4', b: 'soft = 3 ? 1 : 2' }),
  ]);
  const after = renamed(design, 'tail_stock.soft', 'balsa');
  expect(textAt(after, 'a')).toBe('tail_stock = balsa ? soft : 4');
  expect(textAt(after, 'b')).toBe('soft = 3 ? 1 : 2');
});

describe('a name is refused', () => {
  const refusal = (path: string, to: string) => {
    const renaming = rename(documentOf([...cellsOf(smallDesign()), blockOf('cord', {}, 'spare')]), path, to);
    return renaming.ok ? 'taken' : renaming.message;
  };
  test('in words', () => {
    expect(refusal('gone', 'here')).toBe('Nothing that can be renamed is called “gone”.');
    expect(refusal('tip_weight', 'cord')).toBe('Something is called “cord” already. Choose another name.');
    expect(refusal('parts.fin', 'tip')).toBe('Something is called “parts.tip” already. Choose another name.');
    expect(refusal('tip_weight', '2nd')).toBe(
      '“2nd” cannot be a name. A name starts with a letter and has letters, digits and _ only.',
    );
    expect(refusal('tip_weight', 'sqrt')).toBe(
      '“sqrt” cannot be a name: it means something else in formulas. Choose another.',
    );
    expect(refusal('tip_weight', 'constructor')).toBe(
      '“constructor” cannot be a name: the program keeps it for itself. Choose another.',
    );
    expect(refusal('tip_weight', 'tip_weight')).toBe('taken');
  });
});
