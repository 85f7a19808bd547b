import { describe, expect, it } from 'vitest';
import type { ChartCell } from '../../../engine/sheet/document';
import { cellsOf } from '../../../engine/sheet/sheets';
import { startEngine } from '../../../engine/study/session';
import { LENGTH, ONE } from '../../../engine/units/index';
import { onOneSheet } from '../sheet/one-sheet';
import { library, slideRule } from './slide-rule';

async function opened(document = slideRule()) {
  let time = 0;
  const engine = startEngine(library, { pause: async () => {}, now: () => (time += 100) });
  await engine.open(document);
  return engine;
}

describe('a trace of an open document', () => {
  it('tells what runs along what, in the units of the sheet, with its numbers', async () => {
    const engine = await opened();
    const told = await engine.trace('root.steps');
    const mean = Math.sqrt(0.02 * 0.04);
    expect(told).toEqual({
      revision: 1,
      path: 'root.steps',
      title: 'Steps to the mean',
      doc: 'From nothing to the mean.',
      columns: [
        { name: 'share', title: 'Share', symbol: 's', doc: 'Of the way.', dimension: ONE, unit: '%', suffix: '' },
        { name: 'reached', title: 'Reached', symbol: '', doc: '', dimension: LENGTH, unit: 'mm', suffix: '' },
      ],
      present: [Float64Array.of(0, 0.5, 1), Float64Array.of(0, mean / 2, mean)],
    });
    expect(structuredClone(told)).toEqual(told);
    const trade = await (await opened({ ...slideRule(), units: 'inch_pound' })).trace('root.steps');
    expect(trade.columns.map((column) => column.unit)).toEqual(['%', 'in']);
  });

  it('follows the design, and tells the baseline beside it', async () => {
    const engine = await opened({ ...slideRule(), baseline: { a: '10 mm' } });
    await engine.set([['a', '30 mm']]);
    const { revision, present, baseline } = await engine.trace('root.steps');
    expect(revision).toBe(2);
    expect(present[1]![2]).toBe(Math.sqrt(0.03 * 0.06));
    expect(baseline![1]![2]).toBe(Math.sqrt(0.01 * 0.02));
  });

  it('tells a variant that charts show in the place of the baseline, and nothing in the place of one that they do not', async () => {
    const variants = [
      { name: 'Long', changes: { a: '30 mm' }, on_charts: true },
      { name: 'Aside', changes: { a: '40 mm' } },
    ];
    const engine = await opened({ ...slideRule(), baseline: { a: '10 mm' }, variants });
    const { present, baseline } = await engine.trace('root.steps', 'Long');
    expect(present[1]![2]).toBe(Math.sqrt(0.02 * 0.04));
    expect(baseline![1]![2]).toBe(Math.sqrt(0.03 * 0.06));
    expect((await engine.trace('root.steps', 'Aside')).baseline).toBeUndefined();
  });

  it('goes by the name that the block has in the document', async () => {
    const document = slideRule();
    const cells = cellsOf(document).map((cell) => (cell.id === '3' ? { ...cell, name: 'wurzel' } : cell));
    const engine = await opened({ ...document, sheets: onOneSheet(cells) });
    expect((await engine.trace('wurzel.steps')).present).toHaveLength(2);
  });

  it('says why there is none', async () => {
    const engine = await opened();
    const message = async (path: string) => {
      const told = await engine.trace(path);
      expect(told.present).toEqual([]);
      return told.message;
    };
    expect(await message('root.nothing')).toBe('There is nothing called root.nothing to draw. There is root.steps.');
    await engine.set([['a', '0 mm']]);
    expect(await message('root.steps')).toBe('Steps to the mean has nothing to show for this design.');
    await engine.set([['b', '-1 mm']]);
    await engine.set([['a', '20 mm']]);
    expect(await message('root.steps')).toBe('Side 20\u00a0mm and height −1\u00a0mm point opposite ways.');
    const rest = slideRule();
    const cells = cellsOf(rest);
    const without = await opened({ ...rest, sheets: onOneSheet(cells.filter((cell) => cell.kind === 'variables')) });
    expect((await without.trace('root.steps')).message).toBe(
      'There is nothing called root.steps to draw. Nothing in this design has anything to draw.',
    );
  });

  it('is what lines can be drawn from, and a ring where it runs along an angle', async () => {
    const turn = {
      title: 'Turn',
      doc: '',
      columns: {
        angle: { dimension: ONE, unit: '°', symbol: 'ψ', title: 'Angle', doc: '' },
        reached: { dimension: LENGTH, unit: 'mm', symbol: '', title: 'Reached', doc: '' },
      },
      run: () => ({ angle: [0, 1], reached: [1, 2] }),
    };
    const blocks = library.blocks.map((each) =>
      each.kind === 'root' ? { ...each, traces: { ...each.traces, turn } } : each,
    );
    const faults = async (more: Partial<ChartCell>) => {
      const ring: ChartCell = {
        ...{ kind: 'chart', id: 'r', name: 'turn_ring', title: '', chart: 'ring' },
        ...{ series: '', of: 'root.turn', across: '', up: ['reached'], lines: '', ...more },
      };
      const rest = slideRule();
      const cells = cellsOf(rest);
      const engine = startEngine({ ...library, blocks }, { pause: async () => {}, now: () => 0 });
      return (await engine.open({ ...rest, sheets: onOneSheet([...cells, ring]) })).faults.map(
        (fault) => fault.message,
      );
    };
    expect(await faults({})).toEqual([]);
    expect(await faults({ of: '' })).toEqual(['turn_ring has nothing to show. There is “Turn” of Root.']);
    expect(await faults({ of: 'root.steps' })).toEqual([
      'turn_ring shows “root.steps”, which is nothing that runs around the lap. There is “Turn” of Root.',
    ]);
    expect(await faults({ of: 'root.trun' })).toEqual([
      'turn_ring shows “root.trun”, which is nothing that runs around the lap. There is “Turn” of Root. Did you mean “Turn” of Root?',
    ]);
    expect(await faults({ up: ['angle'] })).toEqual(['turn_ring shows “angle” of “Turn” of Root. It tells reached.']);
    expect(await faults({ up: [] })).toEqual(['turn_ring shows nothing. Take one of reached.']);
    const along = { chart: 'along', of: 'root.steps', across: 'share' } as const;
    expect(await faults({ ...along })).toEqual([]);
    expect(await faults({ ...along, across: '' })).toEqual([]);
    expect(await faults({ ...along, across: 'reached', up: ['share'] })).toEqual([]);
    expect(await faults({ ...along, across: 'shar' })).toEqual([
      'turn_ring needs “shar” of “Steps to the mean” of Root across. It tells share, reached. Did you mean share?',
    ]);
    expect(await faults({ ...along, up: ['share'] })).toEqual([
      'turn_ring shows “share” of “Steps to the mean” of Root. It tells reached.',
    ]);
    expect(await faults({ ...along, up: [] })).toEqual(['turn_ring shows nothing. Take at least one of reached.']);
    expect(await faults({ ...along, of: '' })).toEqual([
      'turn_ring has nothing to show. There is “Steps to the mean” of Root, “Turn” of Root.',
    ]);
    expect(await faults({ ...along, of: 'root.stps' })).toEqual([
      'turn_ring shows “root.stps”, which is nothing that runs along a line. There is “Steps to the mean” of Root, “Turn” of Root. Did you mean “Steps to the mean” of Root?',
    ]);
  });

  it('that holds outlines for a picture of its own is nothing for a chart', async () => {
    const blocks = library.blocks.map((each) =>
      each.kind === 'root' ? { ...each, traces: { steps: { ...each.traces!.steps!, outlines: true as const } } } : each,
    );
    const rest = slideRule();
    const cells = cellsOf(rest);
    const along: ChartCell = {
      ...{ kind: 'chart', id: 'r', name: 'steps', title: '', chart: 'along' },
      ...{ series: '', of: 'root.steps', across: '', up: ['reached'], lines: '' },
    };
    const engine = startEngine({ ...library, blocks }, { pause: async () => {}, now: () => 0 });
    const { faults } = await engine.open({ ...rest, sheets: onOneSheet([...cells, along]) });
    expect(faults.map((fault) => fault.message)).toEqual([
      'steps shows “root.steps”, which is nothing that runs along a line. No piece of this design has anything that runs along a line.',
    ]);
    expect((await engine.trace('root.steps')).present).toHaveLength(2);
  });
});

describe('the scale drawing', () => {
  it('takes what has a block of its own from that block', async () => {
    const shape = (part: string, x: number) => ({ view: 'plan' as const, part, points: [x, 0] });
    const drawn = async (rootDraws: readonly string[]) => {
      const draws: Readonly<Record<string, () => ReturnType<typeof shape>[]>> = {
        root: () => rootDraws.map((part) => shape(part, 1)),
        sum: () => [shape('root', 2), shape('sum', 2)],
      };
      const blocks = library.blocks.map((each) => {
        const draw = draws[each.kind];
        return draw ? { ...each, draw } : each;
      });
      const engine = startEngine({ ...library, blocks }, { pause: async () => {}, now: () => 0 });
      return (await engine.open(slideRule())).drawing.map(({ part, points }) => `${part} ${points[0]}`);
    };
    expect(await drawn(['root', 'edge'])).toEqual(['root 1', 'edge 1', 'sum 2']);
    expect(await drawn(['edge'])).toEqual(['edge 1', 'root 2', 'sum 2']);
  });
});
