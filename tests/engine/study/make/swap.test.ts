import { beforeAll, describe, expect, test } from 'vitest';
import type { BlockCell, Document } from '../../../../engine/sheet/document';
import { faultsOfLive, type Live, openLive } from '../../../../engine/sheet/live';
import { textAt } from '../../../../engine/sheet/paths';
import { cellsOf } from '../../../../engine/sheet/sheets';
import { library } from '../../../../engine/study/library';
import { swapKind } from '../../../../engine/study/make/index';
import { placeStudy, studies } from '../../../../engine/study/place/index';
import { begun, forms } from '../place/begun';

let live: Live;
let engine: BlockCell;
beforeAll(() => {
  live = openLive(begun(forms[3]!), library);
  engine = cellsOf(live.compiled.document).find(
    (cell): cell is BlockCell => cell.name === 'engine' && cell.kind === 'model',
  )!;
});

function swapped(kind: string, from: Live = live) {
  const answer = swapKind(engine.id, kind, from, library);
  if (!answer.ok) throw new Error(answer.message);
  return { ...answer, live: openLive(answer.document, library) };
}
const at = ({ compiled, state }: Live, path: string): number => state.m[compiled.program.slotOf.get(path)!]!;
const named = (document: Document, name: string) => cellsOf(document).find((cell) => cell.name === name);

describe('an engine of another kind in the place of the one that is there', () => {
  test.each(['thrust_law', 'two_stroke', 'electric', 'tachometer'])(
    '%s flies with no fault, at its station and weight',
    (kind) => {
      const made = swapped(kind);
      expect(faultsOfLive(made.live).map(({ message }) => message)).toEqual([]);
      expect(named(made.document, 'engine')).toMatchObject({ kind: 'model', of: kind, id: engine.id });
      expect(cellsOf(made.document).filter((cell) => cell.id === engine.id).length).toBe(1);
      expect(textAt(made.document, 'engine.station')).toBe(textAt(live.compiled.document, 'engine.station'));
      expect(at(made.live, 'parts.mass')).toBe(at(live, 'parts.mass'));
      // The propeller is another model of it, so only near.
      expect(at(made.live, 'flight.lap_time') / at(live, 'flight.lap_time')).toBeGreaterThan(0.8);
      expect(at(made.live, 'flight.lap_time') / at(live, 'flight.lap_time')).toBeLessThan(1.25);
    },
  );

  test('a lap that is timed on the design as it flies takes as long as now', () => {
    const own = openLive(begun(forms[0]!), library);
    const timed = swapped('measured_lap', own);
    expect(faultsOfLive(timed.live)).toEqual([]);
    expect(at(timed.live, 'flight.lap_time')).toBeCloseTo(at(own, 'flight.lap_time'), 2);
  });

  test('keeps the tank, and brings a propeller of the same size where it needs one of its own', () => {
    const made = swapped('two_stroke');
    expect(textAt(made.document, 'engine.tank_volume')).toBe(textAt(live.compiled.document, 'engine.tank_volume'));
    expect(at(made.live, 'propeller.diameter')).toBeCloseTo(at(live, 'engine.propeller_diameter'), 4);
    expect(made.says).toContainEqual(expect.stringMatching(/^Adds a propeller of \d+\u00a0mm by \d+\u00a0mm\.$/));
    const back = swapped('thrust_law', made.live);
    expect(textAt(back.document, 'engine.propeller_diameter')).toBe('propeller.diameter');
    expect(back.says).toContainEqual('Reads diameter and pitch from “Propeller”, which stays.');
  });

  test('leads what runs along its propeller to the piece that has it now, so that a study goes on', () => {
    const study = studies().find(({ name }) => name === 'which_propeller')!;
    const placed = placeStudy(study, live, library);
    if (!placed.ok) throw new Error(placed.message);
    const made = swapped('tachometer', openLive(placed.document, library));
    expect(faultsOfLive(made.live)).toEqual([]);
    expect(made.says.join(' ')).not.toContain('Then wrong');
    expect(named(made.document, 'pitch_series')).toMatchObject({
      axes: [{ of: 'propeller.pitch', low: '0.75 × propeller.pitch' }, { of: 'propeller.diameter' }],
    });
    expect(named(made.document, 'pitch_chart')).toMatchObject({
      across: 'propeller.pitch',
      lines: 'propeller.diameter',
    });
  });

  test('takes the title of its kind where it had that of the other', () => {
    expect(engine.title).toBe('Engine by the timed lap');
    expect(named(swapped('tachometer').document, 'engine')).toMatchObject({ title: 'Engine by tachometer' });
    const motor = openLive(begun(forms[15]!), library);
    const cell = named(motor.compiled.document, 'engine')!;
    expect(cell.title).toBe('Motor by the timed lap');
    const answer = swapKind(cell.id, 'electric', motor, library);
    expect(answer.ok && named(answer.document, 'engine')).toMatchObject({ title: 'Electric motor' });
  });

  test('says what it keeps, takes away and what a lap takes then', () => {
    const { says, done } = swapped('electric');
    expect(says[0]).toMatch(/^Keeps .*engine station/);
    expect(says).toContainEqual(
      expect.stringMatching(/^Takes away timed lap, weight then, [^,]+(, [^,]+){3} and \d+ more\.$/),
    );
    expect(says.at(-1)).toMatch(/^A lap takes [\d.]+\u00a0s then; now it takes [\d.]+\u00a0s\.$/);
    expect(done).toMatch(/ is “Electric motor” now\.$/);
  });

  test('leaves a baseline the design that it was', () => {
    const based = openLive({ ...live.compiled.document, baseline: {} }, library);
    const { baseline_design: then } = swapped('electric', based).document;
    expect(then?.sheets.flatMap(({ pieces }) => pieces).find(({ id }) => id === engine.id)).toMatchObject({
      of: engine.of,
    });
  });

  test('is refused where the kind does not fit', () => {
    const refused = { ok: false, message: 'There is no such kind to put in its place.' };
    expect(swapKind(engine.id, 'wing', live, library)).toEqual(refused);
    expect(swapKind(engine.id, engine.of, live, library)).toEqual(refused);
  });
});
