import { describe, expect, test } from 'vitest';
import { mendPath } from '../../../engine/sheet/cells/index';
import type { Cell, ChoiceCell, Document, MendsCell } from '../../../engine/sheet/document';
import { serialise } from '../../../engine/sheet/file';
import { openLive, setLive } from '../../../engine/sheet/live';
import { putText, textAt } from '../../../engine/sheet/paths';
import type { Library } from '../../../engine/sheet/specs';
import { answer } from '../../../engine/study/command/answer';
import { readArguments } from '../../../engine/study/command/arguments';
import { library } from '../../../engine/study/library';
import { mendNow } from '../../../engine/study/mends/mends';
import { MEND_COSTS, type Mend, type MendsAnswer } from '../../../engine/study/mends/told';
import { newModel } from '../../../engine/study/place/index';
import { startEngine } from '../../../engine/study/session';
import { formatQuantity } from '../../../engine/units/index';
import { cases } from '../../cases';
import { randomFrom } from '../sheet/random';
import { part, smallDesign, library as smallLibrary } from '../sheet/small';
import { begun, forms } from './place/begun';

const cellOf = (change: Partial<MendsCell>): MendsCell => ({
  ...{ kind: 'what_mends', id: '99', name: 'mended', title: 'Mended', of: 'parts.x', way: 'to', text: '18 mm' },
  ...{ wanted: ['parts.mass'], ...change },
});
const withCell = (document: Document, cell: MendsCell): Document => {
  const [first, ...others] = document.sheets;
  return { ...document, sheets: [{ ...first!, pieces: [...first!.pieces, cell] }, ...others] };
};

const isChoice = (document: Document, path: string): boolean =>
  document.sheets.some(({ pieces }) => pieces.some(({ kind, name }) => kind === 'choice' && name === path));

type Answer = Omit<MendsAnswer, 'revision'>;

/** Done as told, the result is where it is wanted within half of its last shown digit, and no weight is less than none. */
function held(document: Document, cell: MendsCell, { wanted, found }: Answer, of: Library): void {
  const now = openLive(document, of);
  const valueIn = ({ compiled, state }: typeof now, path: string): number =>
    state.m[compiled.program.slotOf.get(path)!]!;
  const unit = now.compiled.names.findLast(({ path }) => path === cell.of)!.unit;
  const shown = [wanted, valueIn(now, cell.of)].map((value) => formatQuantity(value, unit));
  const decimals = Math.max(...shown.map((text) => text.split('.')[1]?.replace(/\D.*$/s, '').length ?? 0));
  // Each is typed into one and the same design and taken back again: all of them are numbers and options.
  const done = openLive(document, of);
  for (const mend of found) {
    setLive(done, [[mend.path, mend.text]], of);
    const result = valueIn(done, cell.of);
    expect(result, `${mend.path} ${mend.text}`).toBeCloseTo(mend.result, 9);
    if (mend.state === 'short') {
      expect(Math.abs(result - wanted)).toBeLessThan(Math.abs(valueIn(now, cell.of) - wanted));
    } else if (!isChoice(document, mend.path)) {
      const apart = Math.abs(
        Number(formatQuantity(result - wanted, unit, { difference: true, decimals: 9 }).replace(/[^\d.]/g, '')),
      );
      expect(apart, `${mend.path} ${mend.text}`).toBeLessThanOrEqual(0.5 * 10 ** -decimals + 1e-9);
    }
    for (const [w, path] of cell.wanted.entries()) {
      const effect = valueIn(done, path) - valueIn(now, path);
      if (Number.isNaN(effect)) expect(mend.effects[w]).toBeNaN();
      else expect(mend.effects[w]).toBeCloseTo(effect, 9);
    }
    if (mend.cost === 'lead' || mend.cost === 'lighter') expect(mend.to).toBeGreaterThanOrEqual(0);
    expect(mend.beyond > 0).toBe(mend.state === 'beyond');
    expect(setLive(done, [[mend.path, textAt(document, mend.path)!]], of).structure).toBe(false);
  }
  expect(found.map(({ cost }) => MEND_COSTS.indexOf(cost))).toEqual(
    found.map(({ cost }) => MEND_COSTS.indexOf(cost)).toSorted((a, b) => a - b),
  );
}

describe('what mends', () => {
  test.each([...Array(cases(20)).keys()])('holds when it is done as told, ten random designs from seed %d', (seed) => {
    const random = randomFrom(seed + 100);
    for (let k = 0; k < 10; k++) {
      const between = (low: number, high: number, unit: string): string =>
        `${Number((low + random.next() * (high - low)).toPrecision(5))} ${unit}`;
      const texts: readonly (readonly [string, string])[] = [
        ['engine_station', between(-190, -130, 'mm')],
        ['tip_weight', between(0, 50, 'g')],
        ['cord_length', between(15, 21.5, 'm')],
        ['tail_stock', random.pick(['soft', 'faced'])],
        ['parts.wing.x', between(60, 130, 'mm')],
        ['parts.tank.x', between(-90, 0, 'mm')],
        ['parts.engine.mass', between(150, 320, 'g')],
      ];
      const [of, text] = random.pick([
        ['parts.x', between(20, 80, 'mm')],
        ['parts.y', between(-5, 40, 'mm')],
        ['lap.pull', between(4, 9, 'N')],
      ] as const);
      const cell = cellOf({ of, text, wanted: ['parts.mass', 'lap.pull'], way: random.pick(['to', 'least', 'most']) });
      const document = withCell(
        texts.reduce((now, [path, typed]) => putText(now, path, typed)!, smallDesign()),
        cell,
      );
      const found = mendNow(openLive(document, smallLibrary), 'mended');
      expect(found.message).toBeUndefined();
      held(document, cell, found, smallLibrary);
    }
  });

  test('finds what a small design has, ranked by what it costs', () => {
    const document = withCell(smallDesign(), cellOf({}));
    const { now, found, met } = mendNow(openLive(document, smallLibrary), 'mended');
    expect(met).toBe(false);
    expect(now).not.toBeCloseTo(0.018, 3);
    expect(found.map(({ path, cost, state }) => [path, cost, state])).toMatchInlineSnapshot(`
      [
        [
          "engine_station",
          "nothing",
          "met",
        ],
        [
          "parts.engine.weighed",
          "lighter",
          "met",
        ],
        [
          "tip_weight",
          "lead",
          "beyond",
        ],
      ]
    `);
  });

  test('says by how much it goes beyond its travel', () => {
    const document = withCell(smallDesign(), cellOf({ text: '24 mm' }));
    const { found } = mendNow(openLive(document, smallLibrary), 'mended');
    const engine = found.find(({ path }) => path === 'engine_station')!;
    expect(engine.state).toBe('beyond');
    expect(engine.beyond).toBeCloseTo(engine.to + 0.13, 12);
    held(document, cellOf({ text: '24 mm' }), { ...ANSWER, wanted: 0.024, found }, smallLibrary);
  });

  test('has nothing to say where the result is where it is wanted', () => {
    const document = withCell(smallDesign(), cellOf({ text: '1 mm', way: 'least' }));
    expect(mendNow(openLive(document, smallLibrary), 'mended')).toMatchObject({ met: true, found: [] });
  });

  test.each([
    [{ text: '' }, 'Mended does not know where the CG station of parts is wanted. Type it.'],
    [{ of: '' }, 'Mended has no result to mend. Pick one under “Set up”.'],
    [{ of: 'parts.q' }, 'Mended mends “parts.q”: nothing has that name. Did you mean the CG station of parts?'],
    [{ of: 'tip_weight' }, 'Mended mends the tip_weight, which is typed. Take a result.'],
  ] as [Partial<MendsCell>, string][])('%j is refused', (change, message) => {
    const document = withCell(smallDesign(), cellOf(change));
    expect(mendNow(openLive(document, smallLibrary), 'mended').message).toBe(message);
  });

  test('of a begun design moves nothing that is the day or a rule', { timeout: 60_000 }, () => {
    for (const [k, [of, text]] of (
      [
        ['balance.cg_x', '48 mm'],
        ['flight.nose_out', '0.8°'],
        ['flight.outboard_low', '0.5°'],
        ['flight.test_margin', '2.9'],
      ] as const
    ).entries()) {
      const cell = cellOf({ of, text, wanted: ['parts.mass', 'flight.pull', 'flight.lap_time'] });
      const document = withCell(begun(forms[k]!), cell);
      const found = mendNow(openLive(document, library), 'mended');
      expect(found.message).toBeUndefined();
      expect(found.found.length, of).toBeGreaterThan(0);
      const engine = found.found.find(({ path }) => path === 'engine_station');
      if (engine) expect(engine.cost).toBe('nothing');
      for (const { path } of found.found) expect(path).not.toMatch(/^(air|flight|lap)\.|pull_test|wind/);
      held(document, cell, found, library);
    }
  });

  test('takes the engine no further aft than there is room behind it, and says which piece tells', () => {
    const small = begun(forms[0]!);
    const room = newModel('room', library.blocks, { id: 'r', taken: new Set(), fields: {}, isOpen: false });
    const engineIn = (text: string, pieces: readonly Cell[]) => {
      const cell = cellOf({ of: 'balance.cg_x', text, wanted: ['parts.mass'] });
      const sheets = [...small.sheets, { id: 'more', title: 'More', pieces: [...pieces, cell] }];
      const document = { ...small, sheets };
      const { found } = mendNow(openLive(document, library), 'mended');
      return found.find(({ path }) => path === 'engine_station')!;
    };
    // 3.5 mm of room at its tank, which goes half the way with it.
    expect(engineIn('41 mm', [room])).toMatchObject({ state: 'met', beyond: 0 });
    expect(engineIn('50 mm', [])).toMatchObject({ state: 'met' });
    const far = engineIn('50 mm', [room]);
    expect(far).toMatchObject({ state: 'beyond', room: 'room' });
    const there = openLive(
      {
        ...small,
        sheets: [...small.sheets, { id: 'more', title: 'More', pieces: [room] }],
      },
      library,
    );
    setLive(there, [['engine_station', `${(far.to - far.beyond) * 1000} mm`]], library);
    expect(there.state.m[there.compiled.program.slotOf.get('room.aft')!]).toBeCloseTo(0, 9);
  });

  test('counts what another kind weighs as weight that is added or comes off', () => {
    const kinds: ChoiceCell = {
      ...{ kind: 'choice', id: 'k', name: 'nose_block', title: 'Nose block', of: 'numbers', text: 'wood' },
      columns: [{ name: 'mass', unit: 'g', title: 'Mass' }],
      options: (['wood', 'brass', 'air'] as const).map((name, k) => ({
        ...{ name, title: name, pattern: 'plain' },
        values: { mass: `${[8, 40, 0][k]} g` },
      })),
    };
    const small = smallDesign();
    const pieces = small.sheets[0]!.pieces.map((piece) =>
      piece.kind === 'parts'
        ? { ...piece, rows: [...piece.rows, part('block', 'point', { mass: 'nose_block.mass', x: '200' })] }
        : piece,
    );
    const costOf = (text: string, option: string) => {
      const document = { ...small, sheets: [{ ...small.sheets[0]!, pieces: [...pieces, kinds, cellOf({ text })] }] };
      const { found } = mendNow(openLive(document, smallLibrary), 'mended');
      return found.find(({ path, text: to }) => path === 'nose_block' && to === option)?.cost;
    };
    expect(costOf('40 mm', 'brass')).toBe('lead');
    expect(costOf('2 mm', 'air')).toBe('lighter');
  });

  test('is asked of the engine, and ends where a newer edit comes', async () => {
    const engine = startEngine(smallLibrary, { pause: async () => {}, now: () => 0 });
    const document = withCell(smallDesign(), cellOf({}));
    await engine.open(document);
    const { found, revision } = await engine.mends('mended');
    expect(revision).toBe(1);
    expect(found.map(({ path }) => path)).toContain('engine_station');
    let time = 0;
    const slow = startEngine(smallLibrary, {
      pause: async () => void (await slow.set([['tip_weight', '5 g']])),
      now: () => (time += 9),
    });
    await slow.open(document);
    expect((await slow.mends('mended')).state).toBe('stopped');
  });

  test('is printed by the command line', () => {
    const read = readArguments(['x.json', '--mends', 'mended']);
    if (read.ask !== 'run') throw new Error('not understood');
    const { out, code } = answer(read.request, serialise(withCell(smallDesign(), cellOf({}))), smallLibrary);
    expect(code).toBe(0);
    expect(out).toMatchInlineSnapshot(`
      "parts.x is 12.8 mm, wanted 18 mm
      costs no weight: engine_station to -137 mm: parts.x 18.0 mm; parts.mass 0 g
      a lighter part: parts.engine.weighed to 193.7 g: parts.x 18.0 mm; parts.mass −16.3 g
      lead: tip_weight to 86 g, beyond its travel by 36 g: parts.x 18.0 mm; parts.mass +65 g
      "
    `);
    expect(mendPath(cellOf({}))).toBe('mended.wanted');
  });
});

const ANSWER: Answer = {
  mends: 'mended',
  state: 'settled',
  now: 0,
  wanted: 0,
  met: false,
  found: [] as readonly Mend[],
};
