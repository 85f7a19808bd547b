import { setImmediate } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import type { EngineService } from '../../../engine/protocol';
import { withText } from '../../../engine/sheet/baseline';
import type { Document } from '../../../engine/sheet/document';
import { cellsOf } from '../../../engine/sheet/sheets';
import { startEngine } from '../../../engine/study/session';
import type { SweepProgress } from '../../../engine/terms/index';
import { onOneSheet } from '../sheet/one-sheet';
import { library, slideRule } from './slide-rule';

const pause = async (): Promise<void> => {
  await setImmediate();
};
/** A clock that runs 100 ms at every look: every chunk is followed by news and by a look at what came in. */
const hasty = () => {
  let time = 0;
  return { pause, now: () => (time += 100) };
};
const start = (ports = hasty()): EngineService => startEngine(library, ports);

async function opened(document = slideRule()) {
  const engine = start();
  const snapshot = await engine.open(document);
  const names = snapshot.names!;
  const read = (values: Float64Array, path: string) => values[names.find((name) => name.path === path)!.slot];
  return { engine, snapshot, read };
}

describe('an open document', () => {
  it('answers with numbers, names, faults and the drawing', async () => {
    const { snapshot, read } = await opened();
    expect(snapshot.revision).toBe(1);
    expect(read(snapshot.values, 'root.mean')).toBe(Math.sqrt(0.02 * 0.04));
    expect(snapshot.faults).toEqual([]);
    expect(snapshot.baseline).toBeUndefined();
    expect(snapshot.drawing).toEqual([
      { view: 'plan', part: 'edge', points: [0, 0, 0.02, 0.04] },
      { view: 'plan', part: 'mean', points: [Math.sqrt(0.02 * 0.04), 0], label: 'root.mean' },
    ]);
    expect(structuredClone(snapshot)).toEqual(snapshot);
  });

  it('labels the drawing by the name that the block has in the document', async () => {
    const document = slideRule();
    const cells = cellsOf(document).map((cell) => (cell.id === '3' ? { ...cell, name: 'wurzel' } : cell));
    const { snapshot } = await opened({ ...document, sheets: onOneSheet(cells) });
    expect(snapshot.drawing[1]?.label).toBe('wurzel.mean');
  });

  it('leaves out of the drawing what has no number', async () => {
    const { engine } = await opened();
    const { drawing, faults } = await engine.set([['b', '-1 mm']]);
    expect(drawing.map((shape) => shape.part)).toEqual(['edge']);
    expect(faults.map((fault) => [fault.path, fault.state])).toContainEqual(['root', 'fault']);
  });

  it.each([
    ['a value', [['a', '30 mm']]],
    ['a formula in place of a value', [['a', '3 × 8 mm']]],
    ['a value in place of a formula', [['b', '12 mm']]],
    [
      'a choice and a value',
      [
        ['bolt', 'long'],
        ['a', '44 mm'],
      ],
    ],
    ['a text at fault', [['b', '2 × ']]],
    ['a field back to its default', [['sum.more', '']]],
  ] as [string, [string, string][]][])(
    'answers to an edit of %s as it does to opening the edited document',
    async (_, texts) => {
      const { engine } = await opened();
      const bySet = await engine.set(texts);
      const document = slideRule();
      const edited = texts.reduce((now, [path, text]) => withText(now, path, text)!, document);
      const { snapshot: byOpen } = await opened(edited);
      expect({ ...bySet, names: undefined, revision: 0 }).toEqual({ ...byOpen, names: undefined, revision: 0 });
      expect(bySet.names === undefined || JSON.stringify(bySet.names) === JSON.stringify(byOpen.names)).toBe(true);
    },
  );

  it('sends names only when slots or names are new', async () => {
    const { engine, snapshot } = await opened();
    const value = await engine.set([['a', '30 mm']]);
    expect(value.names).toBeUndefined();
    expect(value.shape).toBe(snapshot.shape);
    expect(value.revision).toBe(2);
    const formula = await engine.set([['a', '3 × 7 mm']]);
    expect(formula.names).toBeDefined();
    expect(formula.shape).not.toBe(snapshot.shape);
  });

  it('keeps the baseline the design that it was, through edits of value and of structure', async () => {
    const { engine, snapshot, read } = await opened({ ...slideRule(), baseline: { a: '10 mm' } });
    const before = Math.sqrt(0.01 * 0.02);
    expect(read(snapshot.baseline!, 'root.mean')).toBe(before);
    expect(snapshot.ghost?.[0]?.points).toEqual([0, 0, 0.01, 0.02]);
    const value = await engine.set([['bolt', 'short']]);
    expect(read(value.baseline!, 'root.mean')).toBe(before);
    expect(read(value.baseline!, 'sum.total')).toBe(before + 0.007);
    const structure = await engine.set([['b', '9 mm']]);
    const mean = structure.names!.find((name) => name.path === 'root.mean')!.slot;
    expect(structure.baseline![mean]).toBe(before);
    expect(structure.ghost).toEqual(snapshot.ghost);
  });

  it('says so when a text has nowhere to stand', async () => {
    const { engine } = await opened();
    const { faults } = await engine.set([['nothing_here', '3 mm']]);
    expect(faults.map((fault) => fault.message)).toEqual([
      'There is nothing called nothing_here that a text can be typed into.',
    ]);
  });

  it('checks a text without taking it', async () => {
    const { engine, read } = await opened();
    expect(await engine.check('a', '2 in')).toEqual({ ok: true, value: 0.0508 });
    expect(await engine.check('b', 'bolt.length × 2')).toEqual({ ok: true, value: 0.014 });
    const refused = await engine.check('a', '3 g');
    expect(refused.ok).toBe(false);
    // Number and unit stay together, however narrow the room for the sentence is.
    if (!refused.ok)
      expect(refused.fault.message).toBe(
        '3\u00a0g is a mass; here a length is wanted. Write a length, such as 10\u00a0mm.',
      );
    expect(await engine.check('c', '3')).toMatchObject({ ok: false, fault: { path: 'c' } });
    const { values } = await engine.set([]);
    expect(read(values, 'a')).toBe(0.02);
  });

  it('has to be open before anything is set', async () => {
    await expect(start().set([['a', '1 mm']])).rejects.toThrow('No document is open');
  });

  it('describes its blocks and tables', async () => {
    const { blocks, tables } = await start().describe();
    expect(blocks.map((block) => block.kind)).toEqual(['root', 'sum', 'aside']);
    expect(tables.map((table) => table.name)).toEqual(['materials', 'finishes', 'cords']);
    expect(tables[2]).toMatchObject({
      one: 'cord',
      caution: 'Pull them first.',
      feeds: 'cord',
      columns: [
        { name: 'weave', options: ['laid', 'plaited'], unit: '', mayBeBlank: false },
        { name: 'diameter', symbol: 'd', unit: 'mm', tradeUnit: 'in', mayBeBlank: false },
        { name: 'strength', unit: 'N', tradeUnit: 'lbf', mayBeBlank: true },
      ],
    });
    expect(tables[2]!.rows[1]).toEqual({
      name: 'thick_cord',
      title: 'Thick cord',
      inchTitle: 'Thick cord',
      group: '',
      values: { weave: 1, diameter: 0.0005, strength: Number.NaN },
      words: {},
      source: 'invented',
      memory: true,
    });
  });
});

describe('sweeps of an open document', () => {
  const gather = () => {
    const told: SweepProgress[] = [];
    return { told, progress: (p: SweepProgress) => told.push(p) };
  };

  it('tell what is there as it comes, and end with everything', async () => {
    const { engine } = await opened();
    const { told, progress } = gather();
    await engine.sweep({ sweep: 'grid' }, progress);
    expect(told.map((p) => p.state)).toEqual([...Array(told.length - 1).fill('running'), 'done']);
    expect(told.length).toBeGreaterThan(2);
    expect(told.map((p) => p.done)).toEqual(told.map((p) => p.done).toSorted((a, b) => a - b));
    const [first, last] = [told[0]!, told.at(-1)!];
    expect([last.done, last.total, last.revision]).toEqual([630, 630, 1]);
    expect([...last.why].includes(0xffff)).toBe(false);
    // News that has been told is not changed by later rows.
    expect([...first.why].filter((code) => code !== 0xffff)).toHaveLength(first.done);
    expect(structuredClone(last)).toEqual(last);
  });

  it('run only the coarse lattice while a finger is down', async () => {
    const { engine } = await opened();
    const { told, progress } = gather();
    await engine.sweep({ sweep: 'grid', coarse: true }, progress);
    const last = told.at(-1)!;
    expect(last).toMatchObject({ state: 'done', done: 9 * 9 * 3, total: 630 });
    const full = gather();
    await engine.sweep({ sweep: 'grid' }, full.progress);
    const whole = full.told.at(-1)!;
    for (const [row, code] of last.why.entries()) {
      if (code !== 0xffff) expect(last.columns[0]![row]).toBe(whole.columns[0]![row]);
    }
  });

  it.each([
    ['a newer edit', (engine: EngineService) => engine.set([['a', '21 mm']])],
    ['opening', (engine: EngineService) => engine.open(slideRule())],
    ['being told to', (engine: EngineService) => engine.stop('grid')],
  ])('stop between two chunks by %s', async (_, act) => {
    const { engine } = await opened();
    const { told, progress } = gather();
    const running = engine.sweep({ sweep: 'grid' }, progress);
    await act(engine);
    await running;
    const last = told.at(-1)!;
    expect(last.state).toBe('stopped');
    expect(last.done).toBeLessThan(last.total);
    expect(told.every((p) => p.revision === 1)).toBe(true);
  });

  it('give way to a newer request for the same sweep, which runs to its end', async () => {
    const { engine } = await opened();
    const [first, second] = [gather(), gather()];
    await Promise.all([
      engine.sweep({ sweep: 'grid' }, first.progress),
      engine.sweep({ sweep: 'grid' }, second.progress),
    ]);
    expect(first.told.at(-1)?.state).toBe('stopped');
    expect(second.told.at(-1)).toMatchObject({ state: 'done', done: 630 });
  });

  it('answer for the design as it is now', async () => {
    const { engine } = await opened(slideRule({ sweep: { axes: [{ of: 'bolt', low: '', high: '', count: 0 }] } }));
    await engine.set([['a', '50 mm']]);
    const { told, progress } = gather();
    await engine.sweep({ sweep: 'grid' }, progress);
    expect(told.at(-1)!.revision).toBe(2);
    expect(told.at(-1)!.columns[1]![0]).toBe(Math.sqrt(0.05 * 0.1));
  });

  describe('of the baseline', () => {
    const start = (more: Partial<Document> = {}) => opened({ ...slideRule(), baseline: { a: '10 mm' }, ...more });
    const ask = async (engine: EngineService, baseline: readonly string[]): Promise<SweepProgress> => {
      const { told, progress } = gather();
      await engine.sweep({ sweep: 'grid', baseline }, progress);
      return told.at(-1)!;
    };

    it('run along the axes that are asked for, with the others as the baseline has them', async () => {
      const { engine } = await start();
      const { axes, columns, wanted, state } = await ask(engine, ['b']);
      const present = gather();
      await engine.sweep({ sweep: 'grid' }, present.progress);
      const whole = present.told.at(-1)!;
      const b = whole.axes.find((axis) => axis.path === 'b')!;
      expect(state).toBe('done');
      expect(axes).toEqual([b]);
      const mean = columns[wanted.indexOf('root.mean')]!;
      for (const [k, x] of b.values.entries()) expect(mean[k]).toEqual(x < 0 ? Number.NaN : Math.sqrt(0.01 * x));
    });

    it('stay what they were while the design moves', async () => {
      const { engine } = await start();
      const before = await ask(engine, ['b']);
      await engine.set([['a', '33 mm']]);
      expect((await ask(engine, ['b'])).columns).toEqual(before.columns);
    });

    it('say why they cannot run', async () => {
      const { engine } = await start();
      expect((await ask(engine, ['wing.span'])).message).toMatch(
        /^Grid does not run along “wing\.span”\. It runs along /,
      );
      const { engine: without } = await start({ baseline: undefined });
      expect((await ask(without, ['b'])).message).toBe('There is no baseline to run it for.');
    });
  });

  it('say why they cannot run', async () => {
    const { engine } = await opened();
    const { told, progress } = gather();
    await engine.sweep({ sweep: 'gird' }, progress);
    expect(told).toHaveLength(1);
    expect(told[0]).toMatchObject({
      state: 'fault',
      message: 'There is no trial series called “gird”. The trial series are grid.',
    });
  });
});
