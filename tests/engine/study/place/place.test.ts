import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Cell, Document, Part } from '../../../../engine/sheet/document';
import { openText, serialise } from '../../../../engine/sheet/file';
import { faultsOfLive, type Live, openLive, setLive } from '../../../../engine/sheet/live';
import { sheetRemoval } from '../../../../engine/sheet/remove-sheet';
import { cellsOf, sheetWith } from '../../../../engine/sheet/sheets';
import { applyChanges } from '../../../../engine/sheet/transaction';
import { library } from '../../../../engine/study/index';
import { askedOf, placeStudy, studies } from '../../../../engine/study/place/index';
import { MAKE } from '../../../../engine/study/place/told';
import { someOf } from '../../../cases';
import { withEngine } from '../../blocks/engine-designs';
import { begun, forms } from './begun';
import { allOn, holdTheLaws, type Placed, placedOn } from './laws';

const quern = (): Document => {
  const opened = openText(readFileSync(new URL('../../../designs/quern.tetherwright.json', import.meta.url), 'utf8'));
  if (!opened.ok) throw new Error(opened.message);
  return opened.document;
};

const placed = (name: string, live: Live, answers: Readonly<Record<string, string>> = {}): Placed =>
  placedOn(live, name, studies(), answers);

const designs: readonly (readonly [string, () => Document])[] = [
  ['the Quern 25', quern],
  ...someOf(forms).map(
    (form, k) => [`design ${k + 1}: ${form.drive} ${form.size}, ${form.span}`, () => begun(form)] as const,
  ),
];

for (const [name, design] of designs) holdTheLaws(name, allOn(design(), studies()));

describe('a study', () => {
  it('is in the list where it has a file, and the other way round', () => {
    const files = readdirSync(new URL('../../../../data/studies/', import.meta.url));
    expect(files.toSorted()).toEqual(
      studies()
        .map(({ name }) => `${name}.json`)
        .toSorted(),
    );
    expect(studies().length).toBe(15);
  });
  it('asks which choice is meant where there are several, and takes the answer', () => {
    const live = openLive(quern(), library);
    const { asks, document } = placed('engine_and_tail', live);
    expect(asks).toEqual([
      {
        as: 'stock',
        question: 'Which choice is the tail stock?',
        options: [
          { name: 'stabiliser_stock', title: 'Stabiliser stock' },
          { name: 'elevator_stock', title: 'Elevator stock' },
          { name: 'fin_stock', title: 'Fin stock' },
        ],
        taken: 'stabiliser_stock',
      },
    ]);
    expect(serialise(document)).toContain('"lines": "stabiliser_stock"');
    const other = placed('engine_and_tail', live, { stock: 'fin_stock' });
    expect(cellsOf(other.document).find((cell) => cell.name === 'station_chart')).toMatchObject({ lines: 'fin_stock' });
  });
  it('uses the variable that feeds a field, and makes one of a number, which keeps what was typed', () => {
    const live = openLive(quern(), library);
    const { says, document, sheet } = placed('wind_study', live);
    expect(says).toEqual([
      'Adds lap in wind, with everything as it is estimated until you type it.',
      'Makes a slide of wind: 0 m/s to 13 m/s, now 5 m/s.',
    ]);
    const { pieces, took } = sheetWith(document, sheet)!;
    expect(pieces.find((piece) => piece.kind === 'variables')).toMatchObject({
      title: 'Try these',
      rows: [{ name: 'wind', text: '5 m/s', low: '0 m/s', high: '13 m/s' }],
    });
    expect(took).toEqual({ 'air.wind': '5 m/s' });
    expect(pieces.find((piece) => piece.name === 'wind_series')).toMatchObject({
      axes: [{ of: 'wind' }, { of: 'guide_x' }],
    });
  });
  it('moves what a variant changes to the variable that is made, and back when it is taken off', () => {
    const document = {
      ...quern(),
      variants: [{ name: 'Windy', changes: { 'air.wind': '8 m/s', tip_weight: '25 g' } }],
    };
    const answer = placed('wind_study', openLive(document, library));
    expect(answer.document.variants).toEqual([{ name: 'Windy', changes: { wind: '8 m/s', tip_weight: '25 g' } }]);
    const back = applyChanges(answer.document, sheetRemoval(answer.document, answer.sheet)).document;
    expect(serialise(back)).toBe(serialise(document));
  });
  it('says up to what wind the lines of a racer stay tight, which no wind looked at slackens', () => {
    const racer = forms.find(({ lap_time }) => lap_time === '2.6 s')!;
    const { document } = placed('wind_study', openLive(begun(racer), library));
    const live = openLive(document, library);
    expect(faultsOfLive(live).map(({ message }) => message)).toEqual([]);
    const at = (path: string): number => live.state.m[live.compiled.program.slotOf.get(path)!]!;
    expect(at('lap.wind_at_floor')).toBeNaN();
    expect(at('lap.tight_up_to')).toBe(20);
  });
  it('leaves the fuel shutoff out of a model that carries no fuel', () => {
    const motor = forms.find(({ drive }) => drive === 'motor')!;
    const { document, says } = placed('controls_study', openLive(begun(motor), library));
    expect(says).toContain('Leaves out fuel shutoff: no part of this design is fuel.');
    expect(cellsOf(document).filter(({ name }) => name.startsWith('shutoff'))).toEqual([]);
    const engine = placed('controls_study', openLive(begun(forms[0]!), library));
    expect(cellsOf(engine.document).map(({ name }) => name)).toContain('shutoff_check');
  });
  it('about fuel is nothing for a model that carries none, and says why', () => {
    const motor = openLive(begun(forms.find(({ drive }) => drive === 'motor')!), library);
    const engine = openLive(begun(forms[0]!), library);
    const unfit = ({ compiled: { document } }: Live) =>
      studies().filter((study) => askedOf(study, document, library.blocks).unfit !== '');
    expect(unfit(engine)).toEqual([]);
    expect(unfit(motor).map(({ name }) => name)).toEqual(['tank_study', 'race_study']);
    for (const study of unfit(motor)) {
      expect(placeStudy(study, motor, library)).toEqual({
        ok: false,
        message:
          'Not for this design: no part of its weights is fuel. If it carries some, tick “it is fuel” at that part of the table of weight and balance.',
      });
    }
  });
  it('says motor where a motor pulls the model, in its question too', () => {
    const motor = openLive(begun(forms.find(({ drive }) => drive === 'motor')!), library);
    const { document, sheet } = placed('engine_and_tail', motor);
    const { title, pieces } = sheetWith(document, sheet)!;
    expect(title).toBe('Where does the motor go, and what is the tail made of?');
    const words = pieces.flatMap((piece) => (piece.kind === 'note' ? [piece.title, piece.text] : [piece.title]));
    expect(words[0]).toBe('Where the motor goes');
    expect(words.join(' ').replace(/\{[^}]*\}/g, '')).not.toMatch(/engine/i);
    const { question } = askedOf(studies()[0]!, begun(forms[0]!), library.blocks);
    expect(question).toBe('Where does the engine go, and what is the tail made of?');
  });
  it('of propellers says what an engine by a timed lap or by its pull can not tell, and what to do', () => {
    const timed = forms.find(({ lap_time }) => lap_time === '2.6 s')!;
    const asked = (document: Document) => {
      const { document: made, says, sheet } = placed('which_propeller', openLive(document, library));
      const note = sheetWith(made, sheet)!.pieces.find((piece) => piece.kind === 'note');
      return { says, note: note?.kind === 'note' ? note.text : '' };
    };
    const told =
      'As long as this engine is known by a timed lap, its power stays what that lap told, whatever it turns: pitch changes nothing and diameter little. To compare propellers, open the engine’s piece on the sheet of the model, press “Put another kind in its place” and take “Engine by tachometer” (rpm read on one or two propellers), “Engine by its data” or “Electric motor”.';
    const lap = asked(begun(timed));
    expect(lap.says).toEqual([told]);
    expect(lap.note).toMatch(new RegExp(`\\n\\n${told.slice(0, 60)}`));
    expect(asked(begun(forms[0]!)).note).toContain(
      'As long as this engine is known by its pull at rest and its rpm, both stay whatever it turns: a coarser pitch looks faster than it will be, since it slows the engine.',
    );
    expect(asked(withEngine('two_stroke')).says).toEqual([]);
  });
  it('of the pull test slides what the class asks for, unless a load is typed', () => {
    const start = openLive(begun(forms[0]!), library);
    expect(placed('pull_test_study', start).says).toContain('Makes a slide of pull test over weight: 5 to 50, now 10.');
    const loaded = setLive(start, [['flight.test_load', '196 N']], library).live;
    const { says, document } = placed('pull_test_study', loaded);
    expect(says.join(' ')).not.toContain('pull test over weight');
    expect(serialise(document)).toContain('Set the pull-test load to what the rule book of your class asks for');
  });
  it('tries round steps in the units of the design', () => {
    const steps = (form: (typeof forms)[number]): readonly string[] =>
      cellsOf(placed('wind_study', openLive(begun(form), library)).document).flatMap((cell) =>
        cell.kind === 'what_helps' ? cell.rows.map(({ text }) => text) : [],
      );
    expect(steps(forms[0]!)).toEqual(['1 m/s', '5 mm', '5 g', '0.3 m']);
    expect(steps(forms.find(({ span }) => span === '49 in')!)).toEqual(['2 mph', '0.2 in', '0.2 oz', '1 ft']);
  });
  it('leaves what a slide says now when its sheet goes', () => {
    const { document, sheet } = placed('wind_study', openLive(quern(), library));
    const moved = setLive(openLive(document, library), [['wind', '7 m/s']], library).live.compiled.document;
    const back = applyChanges(moved, sheetRemoval(moved, sheet)).document;
    expect(cellsOf(back).find((cell) => cell.name === 'air')).toMatchObject({ fields: { wind: '7 m/s' } });
    expect(faultsOfLive(openLive(back, library))).toEqual([]);
  });
  it('tries a formula between ends and leaves it', () => {
    const { document } = placed('gear_study', openLive(begun(forms[0]!), library));
    const axis = cellsOf(document).find((cell) => cell.name === 'axle_series');
    expect(axis).toMatchObject({
      axes: [{ of: 'body.wheel_x', low: expect.stringMatching(/ mm$/), high: expect.stringMatching(/ mm$/) }],
    });
  });
  it('tries propellers where the engine turns one of its own', () => {
    const { document } = placed('which_propeller', openLive(withEngine('two_stroke'), library));
    expect(cellsOf(document).find((cell) => cell.name === 'pitch_series')).toMatchObject({
      axes: [{ of: 'propeller.pitch', low: '0.75 × propeller.pitch' }, { of: 'propeller.diameter' }],
    });
    expect(faultsOfLive(openLive(document, library))).toEqual([]);
  });
  it('leaves out a stop that the design watches already, and says so', () => {
    const { document, says } = placed('leadouts_study', openLive(quern(), library));
    expect(says).toEqual([
      'Leaves out the stop “Nose straight or out”: “Nose straight or out” of the design watches the same.',
    ]);
    expect(cellsOf(document).some((cell) => cell.name === 'nose_check')).toBe(false);
  });
  it('says what it lacks', () => {
    const { pieces: _, ...sheet } = quern().sheets[0]!;
    const bare = openLive(
      { ...quern(), sheets: [{ ...sheet, pieces: [] }], figures: [], baseline: undefined },
      library,
    );
    expect(placeStudy(studies()[0]!, bare, library)).toEqual({
      ok: false,
      message: 'A study reads the weights: add a table of weight and balance first.',
    });
  });
});

describe('a design without a choice of tail stock', () => {
  /** As begun with a form, but the tail is cut from sheet of one wood. */
  const sheeted = (): Document => {
    const start = begun(forms[0]!);
    const sheets = start.sheets.map((sheet) => ({
      ...sheet,
      pieces: sheet.pieces.flatMap((piece): readonly Cell[] => {
        if (piece.kind !== 'parts') return JSON.stringify(piece).includes('tail_stock') ? [] : [piece];
        return [{ ...piece, rows: piece.rows.map(asSheet) }];
      }),
    }));
    return { ...start, sheets };
  };
  const asSheet = ({ shape, fields: { stack, ...fields }, ...row }: Part): Part =>
    stack === undefined
      ? { ...row, shape, fields }
      : { ...row, shape: 'sheet', fields: { ...fields, material: 'balsa_medium', thickness: '5 mm' } };
  const at = ({ compiled, state }: Live, path: string): number => state.m[compiled.program.slotOf.get(path)!]!;

  it('is told so, with the press that makes it', () => {
    const { lacks, says, document } = placed('engine_and_tail', openLive(sheeted(), library));
    expect(lacks).toEqual([
      {
        as: 'stock',
        sentence: 'Leaves out the tail stock: no part of the design is made of a choice.',
        offer: 'Make a choice of tail stock',
      },
    ]);
    expect(says.join(' ')).not.toContain('Leaves out the tail stock');
    expect(cellsOf(document).find(({ name }) => name === 'station_chart')).toMatchObject({ lines: '' });
  });
  it('has it made in the same step: the tail weighs what it did, and the study compares by it', () => {
    const live = openLive(sheeted(), library);
    const { lacks, says, document } = placed('engine_and_tail', live, { stock: MAKE });
    expect(lacks).toEqual([]);
    expect(says[0]).toBe(
      'Makes the choice “Tail stock”, from which stabiliser and elevator are cut: as it is now, balsa with ply faces, light ply. What is there now is picked. It stands on the sheet “Weights”.',
    );
    const made = openLive(document, library);
    expect(faultsOfLive(made)).toEqual(faultsOfLive(live));
    for (const path of ['parts.mass', 'parts.x', 'balance.static_margin', 'flight.pull']) {
      expect(at(made, path), path).toBeCloseTo(at(live, path), 9);
    }
    const series = cellsOf(document).find(({ name }) => name === 'station_series');
    expect(series).toMatchObject({ axes: [{ of: 'engine_station' }, { of: 'tail_stock' }] });
  });
});
