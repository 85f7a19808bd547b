import { beforeAll, describe, expect, test } from 'vitest';
import demo from '../../../data/designs/quern-25.tetherwright.json?raw';
import type { EngineService } from '../../../engine/protocol';
import type { Document } from '../../../engine/sheet/document';
import { openText } from '../../../engine/sheet/file';
import { sheetOfPiece } from '../../../engine/sheet/sheets';
import { library, startEngine } from '../../../engine/study/index';
import type { Snapshot } from '../../../engine/study/told';
import type { SweepProgress } from '../../../engine/terms/index';
import { shownOf } from '../../../workbook/store/shown';

type Engine = Omit<EngineService, 'firstDesign'>;

/** One is moved as a finger does, with a sheet on the screen; the other computes everything at each move. */
let moved: Engine;
let whole: Engine;
let document: Document;
let paths: ReadonlyMap<number, string>;

beforeAll(async () => {
  const opened = openText(demo);
  if (!opened.ok) throw new Error(opened.message);
  ({ document } = opened);
  const ports = { pause: () => Promise.resolve(), now: () => performance.now() };
  moved = startEngine(library, ports);
  whole = startEngine(library, ports);
  const { names = [] } = await moved.open(document);
  await whole.open(document);
  paths = new Map(names.map(({ slot, path }) => [slot, path]));
});

const shownWith = (piece: string) => {
  const sheet = document.sheets.find(({ pieces }) => pieces.some(({ name }) => name === piece));
  return shownOf(document, sheet!);
};
const sheetsBehind = ({ behind }: Pick<Snapshot, 'behind'>): string[] => {
  const names = new Set([...(behind ?? [])].flatMap((slot) => paths.get(slot)?.split('.', 1)[0] ?? []));
  const cells = document.sheets.flatMap(({ pieces }) => pieces).filter(({ name }) => names.has(name));
  return [...new Set(cells.map(({ id }) => sheetOfPiece(document, id)!.title))];
};
const rowsOf = async (engine: Engine, sweep: string, coarse: boolean): Promise<SweepProgress> => {
  let last: SweepProgress | undefined;
  await engine.sweep({ sweep, coarse }, (progress) => {
    last = progress;
  });
  return last!;
};

/** A piece of the sheet that is shown, a slide that moves, where to, and a piece that is slow and needed there, if any is. */
const MOVES = [
  ['check_cg', 'engine_station', '-160 mm', ''],
  ['floor_check', 'line_length', '17.5 m', 'lap'],
  ['shutoff', 'handle_spacing', '105 mm', 'lap'],
  ['glide', 'engine_station', '-166 mm', 'glide'],
  ['clear_check', 'axle_x', '-40 mm', ''],
] as const;

describe('while a hand moves the demo', () => {
  test.each(MOVES)(
    'with %s shown, %s = %s: what is shown is that of a full recompute, the rest waits or is too',
    async (piece, path, text, slow) => {
      const part = await moved.set([[path, text]], shownWith(piece));
      const all = await whole.set([[path, text]]);
      const old = new Set(part.behind);
      expect(old.size).toBeGreaterThan(0);
      for (const [slot, value] of part.values.entries()) {
        if (old.has(slot)) expect(value, paths.get(slot)).toBeNaN();
        else expect(Object.is(value, all.values[slot]), `${paths.get(slot)}: ${value}, ${all.values[slot]}`).toBe(true);
      }
      const names = new Set([...old].map((slot) => paths.get(slot)?.split('.', 1)[0]));
      if (slow !== '') expect(names).not.toContain(slow);
      const { cells, paths: told } = shownWith(piece);
      const own = document.sheets.flatMap(({ pieces }) => pieces).filter(({ id }) => cells.includes(id));
      for (const { name } of own) expect(names).not.toContain(name);
      for (const each of told) expect([...old].map((slot) => paths.get(slot))).not.toContain(each);
      expect(part.faults.every(({ message }) => all.faults.some((fault) => fault.message === message))).toBe(true);
    },
  );

  test('a check of another sheet that stands on a slow piece waits, one that does not is fresh', async () => {
    const { behind } = await moved.set([['engine_station', '-158 mm']], shownWith('check_cg'));
    await whole.set([['engine_station', '-158 mm']]);
    const names = [...(behind ?? [])].map((slot) => paths.get(slot));
    expect(names).toEqual(expect.arrayContaining(['floor_check', 'lap.least_pull', 'race.lap_time', 'glide.laps']));
    expect(names).not.toContain('clear_check');
    expect(sheetsBehind({ behind: behind! })).not.toContain('Decide');
  });

  test.each(['fuel_series', 'test_series', 'wind_helps'])(
    '%s, a chart that stands on what waits, has it computed for its samples',
    async (study) => {
      const now = [['engine_station', study === 'fuel_series' ? '-157 mm' : '-156 mm']] as const;
      await moved.set(now, shownWith('check_cg'));
      await whole.set(now);
      const { revision: _, ...rows } = await rowsOf(moved, study, true);
      const { revision: __, ...all } = await rowsOf(whole, study, true);
      expect(rows.state).toBe('done');
      expect(rows).toEqual(all);
    },
  );

  test('what runs along something is of the present design', async () => {
    const now = [['engine_station', '-155 mm']] as const;
    await moved.set(now, shownWith('check_cg'));
    await whole.set(now);
    expect((await moved.trace('race.stints')).present).toEqual((await whole.trace('race.stints')).present);
  });

  test('at rest everything is that of a full recompute', async () => {
    const rested = await moved.set([]);
    const all = await whole.set([]);
    expect(rested.behind).toBeUndefined();
    expect(rested.values).toEqual(all.values);
    expect(rested.faults).toEqual(all.faults);
    expect(rested.drawing).toEqual(all.drawing);
  });

  test('a block of the drawing that waits is drawn where it was, and says so', async () => {
    const before = await moved.set([]);
    const rods = ({ drawing }: Snapshot) => drawing.filter(({ part }) => part === 'pushrod');
    const { drawing } = await moved.set([['line_length', '16 m']], shownWith('check_cg'));
    expect(rods({ ...before, drawing })).toEqual(rods(before).map((shape) => ({ ...shape, behind: true })));
    expect(drawing.some((shape) => shape.part === 'outline' && shape.behind)).toBe(false);
    expect(rods(await moved.set([])).some((shape) => shape.behind)).toBe(false);
  });
});
