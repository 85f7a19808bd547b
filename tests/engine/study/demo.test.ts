import { readFileSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { noteFormulas, saidPath } from '../../../engine/sheet/cells/note-pieces';
import type { Cell, Part } from '../../../engine/sheet/document';
import { openText, serialise } from '../../../engine/sheet/file';
import { faultsOfLive, type Live, openLive, setLive } from '../../../engine/sheet/live';
import { textAt } from '../../../engine/sheet/paths';
import { cellsOf } from '../../../engine/sheet/sheets';
import { library } from '../../../engine/study/index';
import { demoText } from '../../../engine/study/place/demo';
import { askedOf, studies } from '../../../engine/study/place/index';
import type { SweepProgress } from '../../../engine/terms/index';
import { wholeOf } from './whole';

const file = readFileSync(new URL('../../../data/designs/quern-25.tetherwright.json', import.meta.url), 'utf8');
const opened = openText(file);
if (!opened.ok) throw new Error(opened.message);
const { document } = opened;
const live = openLive(document, library);
const ofKind = <K extends Cell['kind']>(kind: K) =>
  cellsOf(document).filter((cell) => cell.kind === kind) as Extract<Cell, { kind: K }>[];
const read = (from: Live, path: string): number => from.state.m[from.compiled.program.slotOf.get(path)!]!;

test('the demo is what placing the studies gives; if not, run npm run demo', () => {
  expect(demoText(file)).toBe(file);
});

test('it opens without a fault, is written as it was read, and says that it is invented', () => {
  expect(faultsOfLive(live).map(({ path, message }) => `${path}: ${message}`)).toEqual([]);
  expect(serialise(document)).toBe(file);
  expect(document.invented).toBe(true);
  expect(document.drawn).toMatch(/invented/);
  expect(ofKind('note')[0]!.text).toMatch(/invented profile club racer of the invented Saltmarsh Lane club/);
  for (const row of document.rows) expect(row.source).toMatch(/invented/);
});

test('its first sheets are the design, and every study has one', () => {
  const titles = document.sheets.map(({ title }) => title);
  expect(titles.slice(0, 3)).toEqual(['Decide', 'Model', 'Weights']);
  expect(titles.slice(-studies().length)).toEqual(
    studies().map((study) => askedOf(study, document, library.blocks).question),
  );
});

test('everything that can be computed of a model stands on it', () => {
  const kinds = new Set(ofKind('model').map((cell) => cell.of));
  for (const kind of ['line_shape', 'control', 'shutoff', 'race', 'launch', 'glide', 'tank', 'gear', 'strength', 'lap'])
    expect([kind, kinds.has(kind)]).toEqual([kind, true]);
  for (const kind of ['tolerances', 'what_helps', 'log', 'fit', 'table'] as const) expect(ofKind(kind)).toHaveLength(1);
  expect(ofKind('log')[0]!.rows.length).toBeGreaterThan(4);
});

test('one stop is broken, and the slide of the leadout guide mends it', () => {
  const broken = (from: Live): string[] =>
    ofKind('check').flatMap(({ name, low, high }) => {
      const under = low !== '' && read(from, name) < read(from, `${name}.low`);
      return under || (high !== '' && read(from, name) > read(from, `${name}.high`)) ? [name] : [];
    });
  expect(broken(live)).toEqual(['check_nose']);
  expect(document.sheets[0]!.pieces.some(({ name }) => name === 'check_nose')).toBe(true);
  expect(broken(setLive(openLive(document, library), [['guide_x', '70 mm']], library).live)).toEqual([]);
});

test.each(ofKind('trial_series').map(({ name, title }) => [title, name] as const))(
  '%s: each design has an answer, and they differ',
  (_, name) => {
    const { why, columns, total, wanted } = wholeOf(live, name) as SweepProgress;
    expect(total).toBeGreaterThanOrEqual(3);
    expect([...why].every((code) => code === 0)).toBe(true);
    for (const [w, column] of columns.entries())
      expect([wanted[w], new Set(column).size > 2]).toEqual([wanted[w], true]);
  },
);

/** Edits of the design; each number that a note says has to follow one of them at least. */
const EDITS: readonly [path: string, text: string][] = [
  ['engine_station', '-140 mm'],
  ['tip_weight', '31 g'],
  ['line_length', '19.3 m'],
  ['line_set', 'strand_46'],
  ['guide_x', '72 mm'],
  ['wind', '6 m/s'],
  ['air.temperature', '30 °C'],
  ['axle_x', '-24 mm'],
  ['wire', '3.5 mm'],
  ['strength.handle', '100 N'],
  ['strength.connectors', ''],
  ['lines.handle_spacing', '70 mm'],
  ['handle_spacing', '70 mm'],
  ['tank_height', '10 mm'],
  ['tank_yaw', '6°'],
  ['tank.width', '30 mm'],
  ['race.laps', '80'],
  ['tank.fill', '60 %'],
  ['engine.reading_1', '9400 rpm'],
  ['propeller.pitch', '7 in'],
  ['propeller.diameter', '8 in'],
  ['lap.floor', '4 N'],
  ['ballast.wanted_x', '48 mm'],
];

test('the numbers that its notes say all follow the design, and come back', () => {
  const said = ofKind('note').flatMap(({ name, text }) => noteFormulas(text).map((_, k) => saidPath(name, k)));
  expect(said.length).toBeGreaterThan(40);
  const still = new Set(said);
  for (const path of said) expect([path, Number.isFinite(read(live, path))]).toEqual([path, true]);
  let moved = openLive(document, library);
  for (const edit of EDITS) {
    if (!live.compiled.program.slotOf.has(edit[0])) continue;
    moved = setLive(moved, [edit], library).live;
    for (const path of said) if (read(moved, path) !== read(live, path)) still.delete(path);
    moved = setLive(moved, [[edit[0], textAt(document, edit[0]) ?? '']], library).live;
  }
  for (const path of said) expect([path, read(moved, path)]).toEqual([path, read(live, path)]);
  expect([...still]).toEqual([]);
});

describe('the density of balsa moves the parts that are made of it, and no other', () => {
  const BALSA = 'balsa_medium';
  const own = { table: 'materials', name: BALSA, title: 'Balsa', source: 'weighed', values: { density: '160 kg/m³' } };

  it.each(['balsa', 'balsa_ply'])('with a tail of %s', (stock) => {
    const choices = ofKind('choice');
    const stocks = ['stabiliser_stock', 'elevator_stock'].map((name): [string, string] => [name, stock]);
    const before = setLive(openLive({ ...document, rows: [...document.rows, own] }, library), stocks, library).live;
    const isMade = ({ fields }: Part): boolean => {
      const choice = choices.find(({ name }) => name === fields.stack);
      const picked = stocks.find(([name]) => name === choice?.name)?.[1] ?? choice?.text;
      const layers = choice?.options.find(({ name }) => name === picked)?.layers ?? [];
      return fields.material === BALSA || layers.some((layer) => layer.material === BALSA);
    };
    const parts = ofKind('parts')[0]!.rows;
    const masses = (from: Live): number[] => parts.map(({ name }) => read(from, `parts.${name}.mass`));
    const light = masses(before);
    const heavy = masses(setLive(before, [[`${BALSA}.density`, '200 kg/m³']], library).live);
    const moved = parts.filter((_, k) => heavy[k] !== light[k]).map(({ name }) => name);
    const made = parts.filter(isMade).map(({ name }) => name);
    expect(moved).toEqual(made);
    expect(made).toContain('fin');
    expect(made.includes('stabiliser')).toBe(stock === 'balsa');
    expect(made.length).toBeLessThan(parts.length / 2);
    for (const [k] of parts.entries()) expect(heavy[k]!).toBeGreaterThanOrEqual(light[k]!);
  });
});

test('a number of its notes is followed by a comma where its unit would read on, and reads the same for one as for many', () => {
  const text = (start: string): string[] =>
    ofKind('note')
      .flatMap((note) => note.text.split(/(?<=[.;]) /))
      .filter((sentence) => sentence.startsWith(start));
  expect(text('To bring it to')).toEqual([
    'To bring it to {ballast.wanted_x}, shift the engine: {ballast.engine_shift}.',
  ]);
  expect(text('{race.laps} laps')).toEqual(['{race.laps} laps take {race.time}, stops for fuel: {race.stops};']);
  expect(text('more than 20')).toEqual(['more than 20 m/s (45 mph) is not looked at.']);
});
