import { readFileSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { noteFormulas, saidPath } from '../../../engine/sheet/cells/note-pieces';
import type { Cell, Document, Part } from '../../../engine/sheet/document';
import { openText, serialise } from '../../../engine/sheet/file';
import { faultsOfLive, type Live, openLive, setLive } from '../../../engine/sheet/live';
import { textAt } from '../../../engine/sheet/paths';
import { cellsOf } from '../../../engine/sheet/sheets';
import { library } from '../../../engine/study/index';
import type { SweepProgress } from '../../../engine/terms/index';
import { wholeOf } from './whole';

const folder = new URL('../../../data/workbooks/', import.meta.url);
const textOf = (file: string): string => readFileSync(new URL(file, folder), 'utf8');
const index: { file: string }[] = JSON.parse(textOf('index.json'));
const files = index.map(({ file }) => file);
const [DEMO, ...studies] = files as [string, ...string[]];

function open(file: string): Document {
  const opened = openText(textOf(file));
  if (!opened.ok) throw new Error(opened.message);
  return opened.document;
}
const ofKind = <K extends Cell['kind']>(document: Document, kind: K) =>
  cellsOf(document).filter((cell) => cell.kind === kind) as Extract<Cell, { kind: K }>[];
const read = (live: Live, path: string): number => live.state.m[live.compiled.program.slotOf.get(path)!]!;
const demo = openLive(open(DEMO), library);

/** Edits of the design; each number of a reading has to follow one of them at least. */
const EDITS: readonly [path: string, text: string][] = [
  ['engine_station', '-140 mm'],
  ['tip_weight', '31 g'],
  ['line_length', '19.3 m'],
  ['line_set', 'strand_46'],
  ['wind', '6 m/s'],
  ['fuel_left', '80 %'],
  ['axle_x', '-24 mm'],
  ['axle_z', '-116 mm'],
  ['unevenness', '1.4'],
  ['strength.handle', '100 N'],
  ['tail_stock', 'light_ply'],
  ['tail_stock.balsa.sheet', '6 mm'],
  ['parts.engine.mass', '190 g'],
  ['ballast.wanted_x', '48 mm'],
  ['ballast.tip_station', '450 mm'],
  ['tank_fuel', '70 mL'],
  ['tank_fuel', '100 mL'],
  ['needle', '50 %'],
  ['race.refuel_rate', '10 mL/s'],
];

test('there are ten studies of the one design', () => {
  expect(studies).toHaveLength(10);
});

describe.each(studies)('%s', (file) => {
  const document = open(file);
  const live = openLive(document, library);
  const reading = ofKind(document, 'note').find((cell) => cell.name === 'reading')!;
  const said = noteFormulas(reading.text).map((_, k) => saidPath('reading', k));

  it('opens without a fault, is written as it was read, and says that it is invented', () => {
    expect(faultsOfLive(live)).toEqual([]);
    expect(serialise(document)).toBe(textOf(file));
    expect(document.invented).toBe(true);
    expect(ofKind(document, 'note')[0]!.text).toMatch(/The Quern 25 and all its numbers are invented\.$/);
  });

  it('is the design of the demo', () => {
    for (const path of ['parts.mass', 'balance.cg_x', 'balance.static_margin', 'flight.pull', 'flight.outboard_low']) {
      expect([path, read(live, path)]).toEqual([path, read(demo, path)]);
    }
  });

  it('has sweeps that answer in every row, and charts of them', () => {
    const sweeps = ofKind(document, 'trial_series');
    expect(sweeps.length).toBeGreaterThan(0);
    for (const { name, axes } of sweeps) {
      const { why, columns, total } = wholeOf(live, name) as SweepProgress;
      expect(total).toBeGreaterThanOrEqual(3);
      expect([...why].every((code) => code === 0)).toBe(true);
      for (const column of columns) expect(new Set(column).size).toBeGreaterThan(2);
      const charts = ofKind(document, 'chart').filter((chart) => chart.series === name);
      const shown = charts.flatMap((chart) => [chart.across, chart.lines].filter((axis) => axis !== ''));
      expect([...new Set(shown)].sort()).toEqual(axes.map((axis) => axis.of).sort());
    }
  });

  it('is read in two sentences whose numbers all follow the design', () => {
    expect(reading.text.replaceAll(/\{[^}]*\}/g, 'x').match(/\.(?=\s|$)/g)).toHaveLength(2);
    expect(said.length).toBeGreaterThanOrEqual(6);
    const still = new Set(said);
    for (const path of said) expect([path, Number.isFinite(read(live, path))]).toEqual([path, true]);
    let moved = openLive(document, library);
    for (const edit of EDITS) {
      // Not every study has every piece.
      if (!live.compiled.program.slotOf.has(edit[0])) continue;
      moved = setLive(moved, [edit], library).live;
      for (const path of said) if (read(moved, path) !== read(live, path)) still.delete(path);
      moved = setLive(moved, [[edit[0], textAt(document, edit[0]) ?? '']], library).live;
    }
    for (const path of said) expect([path, read(moved, path)]).toEqual([path, read(live, path)]);
    expect([...still]).toEqual([]);
  });
});

describe('the density of balsa moves the parts that are made of it, and no other', () => {
  const BALSA = 'balsa_medium';
  const own = { table: 'materials', name: BALSA, title: 'Balsa', source: 'weighed', values: { density: '160 kg/m³' } };

  it.each(files.flatMap((file) => ['balsa', 'balsa_ply'].map((stock) => [file, stock] as const)))(
    '%s, tail of %s',
    (file, stock) => {
      const document = open(file);
      const choices = ofKind(document, 'choice');
      const tail = choices.filter(({ name }) => ['tail_stock', 'stabiliser_stock', 'elevator_stock'].includes(name));
      const stocks = tail.map(({ name }): [string, string] => [name, stock]);
      const before = setLive(openLive({ ...document, rows: [...document.rows, own] }, library), stocks, library).live;
      const isMade = ({ fields }: Part): boolean => {
        const choice = choices.find(({ name }) => name === fields.stack);
        const picked = stocks.find(([name]) => name === choice?.name)?.[1] ?? choice?.text;
        const layers = choice?.options.find(({ name }) => name === picked)?.layers ?? [];
        return fields.material === BALSA || layers.some((layer) => layer.material === BALSA);
      };
      const parts = ofKind(document, 'parts')[0]!.rows;
      const masses = (live: Live): number[] => parts.map(({ name }) => read(live, `parts.${name}.mass`));
      const light = masses(before);
      const heavy = masses(setLive(before, [[`${BALSA}.density`, '200 kg/m³']], library).live);
      const moved = parts.filter((_, k) => heavy[k] !== light[k]).map(({ name }) => name);
      const made = parts.filter(isMade).map(({ name }) => name);
      expect(moved).toEqual(made);
      expect(made).toContain('fin');
      expect(made.includes('stabiliser')).toBe(stock === 'balsa');
      expect(made.length).toBeLessThan(parts.length / 2);
      for (const [k] of parts.entries()) expect(heavy[k]!).toBeGreaterThanOrEqual(light[k]!);
    },
  );
});
