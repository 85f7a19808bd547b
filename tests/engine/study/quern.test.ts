import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Cell, Document } from '../../../engine/sheet/document';
import { openText, serialise } from '../../../engine/sheet/file';
import { baselineValues, faultsOfLive, type Live, openBaseline, openLive, setLive } from '../../../engine/sheet/live';
import { cellsOf } from '../../../engine/sheet/sheets';
import { library, startEngine } from '../../../engine/study/index';
import { planFor } from '../../../engine/study/kinds/index';
import type { SweepPlan } from '../../../engine/study/sweep/plan';
import type { SweepProgress } from '../../../engine/terms/index';
import { wholeOf } from './whole';

const text = readFileSync(new URL('../../designs/quern.tetherwright.json', import.meta.url), 'utf8');

function open(): Document {
  const opened = openText(text);
  if (!opened.ok) throw new Error(opened.message);
  return opened.document;
}
const document = open();
const drawn = openLive(document, library);
const read = (live: Live, path: string): number => live.state.m[live.compiled.program.slotOf.get(path)!]!;
const set = (...texts: [string, string][]): Live => setLive(openLive(document, library), texts, library).live;
const ofKind = <K extends Cell['kind']>(kind: K) =>
  cellsOf(document).filter((cell) => cell.kind === kind) as Extract<Cell, { kind: K }>[];
const degrees = (radians: number): number => (radians * 180) / Math.PI;

describe('the Quern 25', () => {
  it('opens without a fault and is written as it was read', () => {
    expect(faultsOfLive(drawn)).toEqual([]);
    expect(serialise(document)).toBe(text);
  });

  it('says that it is invented', () => {
    expect(document.invented).toBe(true);
    expect(document.drawn).toMatch(/invented/);
    expect(ofKind('note')[0]!.text).toMatch(/invented profile club racer of the invented Saltmarsh Lane club/);
    for (const row of document.rows) expect(row.source).toMatch(/invented/);
  });

  it('has some 35 to 40 parts, most of them from material and size', () => {
    const { rows } = ofKind('parts')[0]!;
    expect(rows.length).toBeGreaterThanOrEqual(35);
    expect(rows.length).toBeLessThanOrEqual(42);
    expect(rows.filter((row) => row.shape !== 'point').length).toBeGreaterThanOrEqual(25);
    expect(rows.filter((row) => row.fuel)).toHaveLength(1);
    const stacks = rows.filter((row) => row.shape === 'stack').map((row) => row.fields.stack);
    expect(stacks.sort()).toEqual(['elevator_stock', 'fin_stock', 'stabiliser_stock']);
    expect(new Set(rows.map((row) => row.title)).size).toBe(rows.length);
  });

  it('weighs and balances as planned', () => {
    expect(read(drawn, 'parts.mass_half')).toBeCloseTo(0.85, 2);
    expect(read(drawn, 'parts.mass')).toBe(read(drawn, 'parts.mass_half'));
    expect(Math.abs(read(drawn, 'balance.cg_x') - 0.046)).toBeLessThan(0.001);
    expect(Math.abs(read(drawn, 'balance.cg_y') - 0.01)).toBeLessThan(0.001);
    expect(Math.abs(read(drawn, 'balance.cg_z'))).toBeLessThan(0.001);
  });

  it('has the drawn geometry', () => {
    expect(read(drawn, 'wing.inboard_span')).toBe(0.515);
    expect(read(drawn, 'wing.outboard_span')).toBe(0.485);
    expect(read(drawn, 'tail.area')).toBeCloseTo(0.036, 6);
    expect(read(drawn, 'tail.quarter_chord')).toBeCloseTo(0.47, 6);
    expect(read(drawn, 'tail.fin_area')).toBeCloseTo(0.012, 6);
    expect(read(drawn, 'tail.fin_quarter_chord')).toBeCloseTo(0.52, 6);
    expect(read(drawn, 'body.side_area')).toBeCloseTo(0.055, 2);
    expect(read(drawn, 'leadouts.guide_y')).toBe(-0.515);
    expect(read(drawn, 'lines.guide_radius')).toBeCloseTo(18.9, 9);
    expect(read(drawn, 'engine.station')).toBe(-0.15);
  });

  // The independent balance was made with coefficients of its own; the sheet estimates them from ruler and scale.
  it.each([
    ['flight.speed', 24.66, 0.02],
    ['flight.lap_time', 4.93, 0.02],
    ['flight.pull', 25.5, 0.03],
    ['flight.pull_per_weight', 3.06, 0.03],
    ['flight.pull_at_handle', 25.8, 0.03],
    ['flight.lift', 10.4, 0.02],
    ['flight.line_drag', 1.46, 0.06],
    ['flight.drag', 2.37, 0.04],
  ])('flies as an independent balance of it says: %s near %s', (path, expected, share) => {
    expect(Math.abs(read(drawn, path) / expected - 1)).toBeLessThan(share);
  });

  it('points and hangs as that balance says', () => {
    expect(Math.abs(degrees(read(drawn, 'flight.nose_out')) + 0.4)).toBeLessThan(0.2);
    expect(Math.abs(degrees(read(drawn, 'flight.outboard_low')) + 0.4)).toBeLessThan(0.2);
    expect(Math.abs(degrees(read(drawn, 'flight.line_trail')) - 3.3)).toBeLessThan(0.3);
  });

  it('follows every choice that has to be made', () => {
    const aft = set(['guide_x', '72 mm']);
    expect(degrees(read(aft, 'flight.nose_out') - read(drawn, 'flight.nose_out'))).toBeCloseTo(0.8, 0);
    expect(read(aft, 'flight.pull')).toBeGreaterThan(read(drawn, 'flight.pull'));
    const longer = set(['line_length', '19.3 m']);
    expect(read(longer, 'flight.pull') / read(drawn, 'flight.pull') - 1).toBeCloseTo(-0.06, 1);
    expect(read(longer, 'flight.lap_time') - read(drawn, 'flight.lap_time')).toBeCloseTo(0.29, 1);
    const heavier = set(['tip_weight', '31 g']);
    expect(read(heavier, 'parts.mass') - read(drawn, 'parts.mass')).toBeCloseTo(0.01, 9);
    expect(degrees(read(heavier, 'flight.outboard_low') - read(drawn, 'flight.outboard_low'))).toBeCloseTo(0.25, 1);
    for (const [choice, row] of [
      ['stabiliser_stock', 'stabiliser'],
      ['elevator_stock', 'elevator'],
      ['fin_stock', 'fin'],
    ] as const) {
      const [light, heavy] = [set([choice, 'balsa']), set([choice, 'light_ply'])];
      expect(read(heavy, `parts.${row}.mass`)).toBeGreaterThan(read(light, `parts.${row}.mass`));
      expect(read(heavy, 'balance.cg_x')).toBeGreaterThan(read(light, 'balance.cg_x'));
    }
    const thick = set(['line_set', 'strand_46']);
    expect(read(thick, 'flight.speed')).toBeLessThan(read(drawn, 'flight.speed'));
    expect(read(thick, 'flight.breaking_margin')).toBeGreaterThan(read(drawn, 'flight.breaking_margin'));
  });

  it('has 40 mm of engine travel before drilling and 12 mm after', () => {
    const travel = (live: Live): number => read(live, 'engine_station.high') - read(live, 'engine_station.low');
    expect(travel(drawn)).toBeCloseTo(0.04, 12);
    expect(travel(set(['bearers', 'after_drilling']))).toBeCloseTo(0.012, 12);
  });

  it('starts from a baseline that differs, so that changes show', () => {
    const baseline = baselineValues(drawn, openBaseline(drawn, library)!);
    const at = drawn.compiled.program.slotOf.get('balance.cg_x')!;
    expect(baseline[at]!).toBeLessThan(read(drawn, 'balance.cg_x') - 0.003);
    const flying = drawn.compiled.program.slotOf.get('flight.pull')!;
    expect(baseline[flying]!).toBeGreaterThan(20);
  });

  it('shows key figures that all have a value', () => {
    for (const path of document.figures) expect([path, Number.isFinite(read(drawn, path))]).toEqual([path, true]);
    expect(ofKind('check').length).toBeGreaterThanOrEqual(3);
  });

  it('draws everything that the picture names', async () => {
    const ports = { pause: () => Promise.resolve(), now: () => 0 };
    const { drawing, ghost } = await startEngine(library, ports).open(document);
    const parts = new Set(drawing.map((shape) => shape.part));
    for (const part of [
      'wing',
      'stabiliser',
      'elevator',
      'fin',
      'body',
      'engine',
      'bearers',
      'propeller',
      'tank',
      'wheel',
      'bellcrank',
      'leadout',
      'line',
      'guide',
      'cg',
      'neutral_point',
    ]) {
      expect([part, parts.has(part)]).toEqual([part, true]);
    }
    expect(ghost?.length).toBe(drawing.length);
    const names = new Set(drawn.compiled.names.map((name) => name.path));
    for (const { label } of drawing) if (label) expect([label, names.has(label)]).toEqual([label, true]);
  });
});

describe('the sweeps of the Quern 25', () => {
  it.each([
    ['balance_sweep', 'stabiliser_stock', ['balsa', 'balsa_ply', 'light_ply']],
    ['pull_sweep', 'line_set', ['strand_30', 'strand_38', 'strand_46']],
  ])('give in every row of %s, bit for bit, what setting it by hand gives', (name, choice, options) => {
    const { axes, wanted, columns, why, total } = wholeOf(drawn, name) as SweepProgress;
    expect([...why].every((code) => code === 0)).toBe(true);
    expect(total).toBe(axes[0]!.values.length * options.length);
    expect(axes[1]!.path).toBe(choice);
    let live = openLive(document, library);
    for (let row = 0; row < total; row++) {
      const value = axes[0]!.values[Math.floor(row / options.length)]!;
      live = setLive(
        live,
        [
          [axes[0]!.path, `${value} m`],
          [choice, options[row % options.length]!],
        ],
        library,
      ).live;
      for (const [w, path] of wanted.entries()) {
        expect(columns[w]![row], `${path} in row ${row}`).toBe(read(live, path));
      }
    }
  });

  it('fly nothing where only the balance is wanted', () => {
    const { each } = planFor(drawn, 1, 'balance_sweep') as SweepPlan;
    const paths = new Set([...each].map((k) => drawn.compiled.program.steps[k]!.path));
    expect(paths.has('balance')).toBe(true);
    for (const path of ['flight', 'ballast', 'wing', 'lines', 'parts.fin'])
      expect([path, paths.has(path)]).toEqual([path, false]);
  });

  it('are what the charts show', () => {
    const sweeps = new Map(ofKind('trial_series').map((cell) => [cell.name, cell]));
    for (const chart of ofKind('chart')) {
      const sweep = sweeps.get(chart.series)!;
      expect(sweep.axes.map((axis) => axis.of)).toEqual([chart.across, chart.lines]);
      expect(sweep.wanted).toEqual(chart.up);
    }
  });
});
