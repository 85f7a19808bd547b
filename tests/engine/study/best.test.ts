import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Axis, BestCell, BestGoal, Cell, CheckCell, Document } from '../../../engine/sheet/document';
import { openText, serialise } from '../../../engine/sheet/file';
import { openLive, setLive } from '../../../engine/sheet/live';
import { bestNow } from '../../../engine/study/best/best';
import type { BestAnswer, BestProgress } from '../../../engine/study/best/told';
import { answer } from '../../../engine/study/command/answer';
import { readArguments } from '../../../engine/study/command/arguments';
import { library } from '../../../engine/study/library';
import { startEngine } from '../../../engine/study/session';
import { writeQuantity } from '../../../engine/units/index';
import { smallDesign, library as smallLibrary } from '../sheet/small';

const axis = (of: string, count = 5, change: Partial<Axis> = {}): Axis => ({ of, low: '', high: '', count, ...change });
const cellOf = (change: Partial<BestCell> = {}): BestCell => ({
  ...{ kind: 'best_compromises', id: '99', name: 'best', title: 'Best' },
  axes: [axis('tip_weight'), axis('cord_length')],
  goals: [
    { of: 'parts.mass', way: 'least' },
    { of: 'lap.pull', way: 'most' },
  ],
  ...{ keeps: [], wanted: ['parts.x'], ...change },
});
const check = (change: Partial<CheckCell>): CheckCell => ({
  ...{ kind: 'check', id: '98', name: 'stop', title: 'Pull', of: 'lap.pull', low: '', high: '', below: '', above: '' },
  ...change,
});
const withCells = (document: Document, ...cells: readonly Cell[]): Document => {
  const [first, ...others] = document.sheets;
  return { ...document, sheets: [{ ...first!, pieces: [...first!.pieces, ...cells] }, ...others] };
};
const found = (cell: BestCell, ...more: readonly Cell[]) =>
  bestNow(openLive(withCells(smallDesign(), ...more, cell), smallLibrary), 'best');

const costsOf = (goals: readonly BestGoal[], values: readonly number[]): readonly number[] =>
  values.map((value, g) => (goals[g]!.way === 'least' ? value : -value));

describe('best compromises', () => {
  test('of a small design are those that none of the others beats', () => {
    const { state, front, shown, tried, unanswered } = found(cellOf());
    expect(state).toBe('settled');
    expect(front).toBeGreaterThan(5);
    expect(tried).toBeGreaterThan(25);
    expect(unanswered).toBe(0);
    for (const a of shown) {
      for (const b of shown) {
        const [x, y] = [costsOf(cellOf().goals, a.goals), costsOf(cellOf().goals, b.goals)];
        if (a !== b) expect(y.every((cost, k) => cost <= x[k]!)).toBe(false);
      }
    }
    expect(shown.map(({ goals }) => goals[0])).toEqual(shown.map(({ goals }) => goals[0]).toSorted((a, b) => a! - b!));
  });

  test('give what they are told to give when they are typed', () => {
    const document = withCells(smallDesign(), cellOf());
    const { shown, axes } = bestNow(openLive(document, smallLibrary), 'best');
    for (const { at, goals, others } of shown) {
      const texts = at.map((si, a) => [axes[a]!, writeQuantity(si, axes[a] === 'tip_weight' ? 'g' : 'm')] as const);
      const { live } = setLive(openLive(document, smallLibrary), texts, smallLibrary);
      const value = (path: string): number => live.state.m[live.compiled.program.slotOf.get(path)!]!;
      expect(value('parts.mass')).toBeCloseTo(goals[0]!, 9);
      expect(value('lap.pull')).toBeCloseTo(goals[1]!, 9);
      expect(value('parts.x')).toBeCloseTo(others[0]!, 9);
    }
  });

  test('have numbers that can be typed: as many digits as tell the steps apart', () => {
    const { shown } = found(cellOf({ axes: [axis('tip_weight', 4), axis('cord_length', 4)] }));
    const grams = shown.map(({ at }) => String(Number((at[0]! * 1000).toPrecision(12))));
    // A step of a sixteenth of a third of 50 g is 1.04 g.
    for (const text of grams) expect(text).toMatch(/^\d+(\.\d)?$/);
    expect(new Set(shown.map(({ at }) => at.join())).size).toBe(shown.length);
  });

  test('are the same when the wishes stand in another order', () => {
    const { goals } = cellOf();
    const sorted = (answer: ReturnType<typeof found>) => answer.shown.map(({ at }) => at.join()).sort();
    const there = found(cellOf({ axes: [axis('tip_weight'), axis('cord_length'), axis('tail_stock')] }));
    const back = found(
      cellOf({ axes: [axis('tip_weight'), axis('cord_length'), axis('tail_stock')], goals: goals.toReversed() }),
    );
    expect(sorted(back)).toEqual(sorted(there));
    expect(back.front).toBe(there.front);
  });

  test('are the same for a result that rises with the one that is wanted', () => {
    const cube: Cell = {
      ...{ kind: 'formula', id: '97', name: 'bent', title: 'Bent' },
      lines: [{ name: 'more', text: '(lap.pull ÷ 1 N)^3 + 7', unit: '' }],
    };
    const plain = found(cellOf());
    const bent = found(
      cellOf({
        goals: [
          { of: 'parts.mass', way: 'least' },
          { of: 'more', way: 'most' },
        ],
      }),
      cube,
    );
    expect(bent.shown.map(({ at }) => at)).toEqual(plain.shown.map(({ at }) => at));
  });

  test('keep every limit that they are to keep, and the one that is taken out of the list no more', () => {
    const free = found(cellOf()).shown.map(({ goals }) => goals[1]!);
    const middle = (Math.max(...free) + Math.min(...free)) / 2;
    const limit = check({ high: `${middle} N` });
    const kept = found(cellOf({ keeps: ['stop'] }), limit);
    expect(kept.shown.length).toBeGreaterThan(0);
    for (const { goals } of kept.shown) expect(goals[1]).toBeLessThanOrEqual(middle);
    expect(kept.broken).toEqual([{ path: 'stop', count: expect.any(Number) }]);
    const { keeps: _, ...all } = cellOf();
    expect(found(all, limit).broken.map(({ path }) => path)).toEqual(['cg_band']);
    expect(Math.max(...found(cellOf({ keeps: [] }), limit).shown.map(({ goals }) => goals[1]!))).toBeGreaterThan(
      middle,
    );
  });

  test('say what keeps every design out where none is left', () => {
    const text = (cell: BestCell, ...more: readonly Cell[]): string => {
      const file = serialise(withCells(smallDesign(), ...more, cell));
      const read = readArguments(['x.json', '--best', 'best']);
      if (read.ask !== 'run') throw new Error('not understood');
      return answer(read.request, file, smallLibrary).out.split('\n')[1]!.replaceAll('\u00a0', ' ');
    };
    expect(text(cellOf({ keeps: ['stop'] }), check({ low: '500 N' }))).toBe(
      'None of the 25 designs that were tried keeps every limit. All of them break “Pull”.',
    );
    expect(text(cellOf({ axes: [axis('cord_length', 5, { low: '80 m', high: '100 m' })] }))).toMatchInlineSnapshot(
      `"None of the 5 designs that were tried keeps every limit. All of them have no answer, most often for this reason: The length of cord is 80 m. Allowed: 1 m to 30 m. Type a value within that."`,
    );
  });

  test('of the design as set are told', () => {
    const { present } = found(cellOf());
    expect(present.keeps).toBe(true);
    expect(present.goals).toHaveLength(2);
    const { shown } = found(cellOf());
    const costs = costsOf(cellOf().goals, present.goals);
    const better = shown.filter(({ goals }) => costsOf(cellOf().goals, goals).every((cost, k) => cost <= costs[k]!));
    expect(present.beatenBy).toBeGreaterThanOrEqual(better.length);
  });

  test.each([
    [{ goals: [] }, 'Best has 0 wishes. Two or three are allowed: pick them under “What is wanted” in its form.'],
    [
      {
        goals: [
          { of: 'parts.mass', way: 'least' },
          { of: 'parts.mass', way: 'most' },
        ],
      },
      'Best wants the all-up weight of parts twice. Take two different results.',
    ],
    [{ axes: [] }, 'Best has 0 axes. One to 4 are allowed.'],
    [{ keeps: ['stopp'] }, 'Best keeps the limit of “stopp”: nothing has that name.'],
    [
      { axes: [axis('lap.pull')] },
      'Best runs along the pull of lap. An axis is a variable, a choice or something typed in the model: make it a variable and run along that.',
    ],
    [
      { axes: [axis('tip_weight', 300), axis('cord_length', 300)] },
      'Best begins with 90000 designs. 50000 are allowed: take fewer values, between which it looks closer by itself.',
    ],
  ] as [Partial<BestCell>, string][])('%j is refused', (change, message) => {
    expect(found(cellOf(change)).message).toBe(message);
  });

  test('are asked of the engine with news on the way, end where a newer edit comes, and halt with what there is', async () => {
    let time = 0;
    const document = withCells(smallDesign(), cellOf({ axes: [axis('tip_weight', 40), axis('cord_length', 40)] }));
    const news: BestProgress[] = [];
    const engine = startEngine(smallLibrary, { pause: async () => {}, now: () => (time += 9) });
    await engine.open(document);
    const whole = await engine.best('best', (each) => news.push(each));
    expect(whole).toMatchObject({ state: 'settled', revision: 1 });
    expect(news[0]).toMatchObject({ best: 'best', grid: 1600, round: 0, rounds: 4 });
    expect(news.at(-1)!.round).toBeGreaterThan(0);

    let turns = 0;
    const halted = startEngine(smallLibrary, {
      pause: async () => void (++turns === 12 && (await halted.haltBest('best'))),
      now: () => (time += 9),
    });
    await halted.open(document);
    const part: BestAnswer = await halted.best('best', () => {});
    expect(part.state).toBe('halted');
    expect(part.tried).toBeLessThan(1600);
    expect(part.shown.length).toBeGreaterThan(0);

    const edited = startEngine(smallLibrary, {
      pause: async () => void (await edited.set([['tip_weight', '5 g']])),
      now: () => (time += 9),
    });
    await edited.open(document);
    expect((await edited.best('best', () => {})).state).toBe('stopped');
  });
});

test('on the demo no design of a fine grid beats a shown one by more than the grid is wide', {
  timeout: 180_000,
}, () => {
  const opened = openText(readFileSync('data/designs/quern-25.tetherwright.json', 'utf8'));
  if (!opened.ok) throw new Error(opened.message);
  const goals: readonly BestGoal[] = [
    { of: 'parts.mass', way: 'least' },
    { of: 'flight.pull', way: 'most' },
  ];
  const keeps = ['check_nose', 'check_cg', 'check_pull', 'level_check', 'margin_check'];
  const paths = ['engine_station', 'tip_weight', 'stabiliser_stock'];
  const shownOf = (count: number, wished: readonly BestGoal[]) =>
    bestNow(
      openLive(
        withCells(
          opened.document,
          cellOf({ goals: wished, keeps, wanted: [], axes: paths.map((of) => axis(of, count)) }),
        ),
        library,
      ),
      'best',
    );
  const three: readonly BestGoal[] = [...goals, { of: 'flight.lap_time', way: 'most' }];
  for (const wished of [goals, three]) {
    const { shown } = shownOf(4, wished);
    // The same designs, tried at every place of a grid that is nearly three times as fine and has none of its steps.
    const brute = shownOf(9, wished);
    const all = [...brute.beaten, ...brute.shown].map((design) => costsOf(wished, design.goals));
    const wide = wished.map((_, g) => {
      const costs = all.map((each) => each[g]!);
      return (Math.max(...costs) - Math.min(...costs)) / 8;
    });
    expect(shown.length).toBe(24);
    for (const { goals: values } of shown) {
      const costs = costsOf(wished, values);
      const better = all.filter((other) => other.every((cost, g) => cost < costs[g]! - wide[g]!));
      expect(better).toEqual([]);
    }
  }
});
