import { beforeAll, describe, expect, test } from 'vitest';
import type { ChartCell, Document, SweepCell, VariablesCell } from '../../../../engine/sheet/document';
import { faultsOfLive, type Live, openLive } from '../../../../engine/sheet/live';
import { textAt } from '../../../../engine/sheet/paths';
import { cellsOf, sheetOfPiece } from '../../../../engine/sheet/sheets';
import { library } from '../../../../engine/study/library';
import { makeChart, makeVariable, offerChart } from '../../../../engine/study/make/index';
import type { MakingAnswer } from '../../../../engine/study/make/told';
import { begun, forms } from '../place/begun';

let live: Live;
beforeAll(() => {
  live = openLive(begun(forms[0]!), library);
});

const model = { sheet: 's2' };
const done = (answer: MakingAnswer): Extract<MakingAnswer, { ok: true }> => {
  if (!answer.ok) throw new Error(answer.message);
  return answer;
};
const faults = (document: Document): readonly string[] =>
  faultsOfLive(openLive(document, library)).map((each) => each.message);
const at = (document: Document, path: string): number => {
  const { compiled, state } = openLive(document, library);
  return state.m[compiled.program.slotOf.get(path)!]!;
};
const piece = (document: Document, name: string) => cellsOf(document).find((cell) => cell.name === name);
const holder = (document: Document, id: string) => cellsOf(document).find((cell) => cell.id === id) as VariablesCell;

describe('a number that becomes a variable', () => {
  test('keeps its value, and what is typed reads the variable', () => {
    const { document, says, cell, done: doneSays } = done(makeVariable('tail.span', live, model));
    const variable = textAt(document, 'tail.span')!;
    const { rows } = holder(document, cell);
    expect(rows.at(-1)).toMatchObject({ name: variable, text: textAt(live.compiled.document, 'tail.span') });
    expect(at(document, 'tail.span')).toBe(at(live.compiled.document, 'tail.span'));
    expect(at(document, 'balance.cg_x')).toBe(at(live.compiled.document, 'balance.cg_x'));
    expect(faults(document)).toEqual(faults(live.compiled.document));
    expect(doneSays).toMatch(/^.* slides now, from .* to .*, under “Set these”\.$/);
    expect(says[0]).toMatch(/^Makes a slide of .*: .* to .*, now .*\. It stands under “Set these”\.$/);
  });

  test('takes over what a variant changes there', () => {
    const variants = [{ name: 'Wide', changes: { 'tail.span': '500 mm' } }];
    const { document, path } = done(
      makeVariable('tail.span', openLive({ ...live.compiled.document, variants }, library), model),
    );
    expect(document.variants).toEqual([{ name: 'Wide', changes: { [path]: '500 mm' } }]);
  });

  test('stands in the piece of variables that the design has, and the sheet of that is named', () => {
    const { document, cell, path } = done(makeVariable('tail.span', live, model));
    expect(sheetOfPiece(document, cell)!.title).toBe('Decide');
    expect(holder(document, cell).rows.at(-1)!.name).toBe(path);
    expect(cellsOf(document).length).toBe(cellsOf(live.compiled.document).length);
  });

  test('has a piece of its own where the design has none, behind the piece that was asked', () => {
    const { document } = live.compiled;
    const sheets = document.sheets.map((sheet) => ({
      ...sheet,
      pieces: sheet.pieces.filter(({ kind }) => kind === 'model'),
    }));
    const bare = openLive({ ...document, sheets }, library);
    const air = piece(bare.compiled.document, 'air')!;
    const made = done(makeVariable('air.humidity', bare, { sheet: 's2', after: air.id }));
    const on = made.document.sheets[1]!.pieces;
    expect(on[on.findIndex(({ id }) => id === air.id) + 1]).toMatchObject({ kind: 'variables', id: made.cell });
  });

  test('with nothing typed takes what the block takes, rounded', () => {
    const blank = live.compiled.names.find(
      (info) =>
        info.kind === 'field' && info.settable && !info.options && textAt(live.compiled.document, info.path) === '',
    )!;
    const { document } = done(makeVariable(blank.path, live, model));
    const [was, is] = [live.state.m[blank.slot]!, at(document, blank.path)];
    expect(Math.abs(is - was)).toBeLessThanOrEqual(0.05 * Math.abs(was) + 1e-9);
  });

  test('with a formula keeps the formula as the text of the variable', () => {
    const computed = live.compiled.names.find(
      (info) => info.kind === 'field' && /[*×/]/.test(textAt(live.compiled.document, info.path) ?? ''),
    );
    if (!computed) throw new Error('No field of a begun design is computed: look for another.');
    const { document, cell } = done(makeVariable(computed.path, live, model));
    expect(holder(document, cell).rows.at(-1)!.text).toBe(textAt(live.compiled.document, computed.path));
    expect(at(document, computed.path)).toBe(at(live.compiled.document, computed.path));
  });

  test('is told to type a value where it has none, and a result is no number that is typed', () => {
    expect(makeVariable('balance.cg_x', live, model)).toEqual({ ok: false, message: 'CG is no number that is typed.' });
    expect(makeVariable('nothing.there', live, model)).toEqual({
      ok: false,
      message: 'nothing.there is no number that is typed.',
    });
  });

  test('leaves the baseline the design that it was', () => {
    const { document } = live.compiled;
    const based = openLive({ ...document, baseline: {} }, library);
    const made = done(makeVariable('tail.span', based, model)).document;
    expect(made.baseline).toEqual({ 'tail.span': textAt(document, 'tail.span') });
  });
});

describe('a chart of a number', () => {
  test('of a result is offered against what it follows from, variables first', () => {
    const offer = offerChart('balance.cg_x', live);
    if (!offer.ok || offer.asks !== 'against') throw new Error('A result is drawn against something.');
    const kinds = offer.others.map((path) => live.compiled.names.find((info) => info.path === path)!.kind);
    expect(kinds[0]).toBe('variable');
    expect(kinds.lastIndexOf('variable')).toBeLessThan(kinds.indexOf('field'));
    expect(offer.others).toContain('tail_stock');
  });

  test('is offered first against the variable that does most to it', () => {
    const order = (of: string, ...some: readonly string[]): readonly string[] => {
      const offer = offerChart(of, live);
      return offer.ok ? offer.others.filter((path) => some.includes(path)) : [];
    };
    const before = Float64Array.from(live.state.m);
    const offer = offerChart('flight.lap_time', live);
    expect(offer.ok && offer.others[0]).toBe('line_length');
    // As they stand on the sheet it would be station, tip, line, guide.
    const four = ['engine_station', 'tip_weight', 'line_length', 'guide_x'] as const;
    expect(order('flight.outboard_low', ...four)[0]).toBe('tip_weight');
    expect(order('balance.cg_share', ...four)[0]).toBe('engine_station');
    expect(live.state.m).toEqual(before);
  });

  test('is offered against nothing that it does not follow from', () => {
    const offer = offerChart('wing.area', live);
    const others = offer.ok ? offer.others : [];
    expect(others).toContain('wing.root_chord');
    expect(others).not.toContain('air.humidity');
  });

  test('of what is set is offered against what follows from it, key figures first', () => {
    const [variable] = cellsOf(live.compiled.document).flatMap((cell) => (cell.kind === 'variables' ? cell.rows : []));
    const offer = offerChart(variable!.name, live);
    if (!offer.ok || offer.asks !== 'result') throw new Error('What is set runs across.');
    const figures = live.compiled.document.figures.filter((path) => offer.others.includes(path));
    expect(figures.length).toBeGreaterThan(0);
    expect(offer.others.slice(0, figures.length)).toEqual(figures);
  });

  test('is drawn from a trial series of its own, with a line for each option of a choice', () => {
    const offer = offerChart('balance.cg_x', live);
    const [first] = offer.ok ? offer.others : [];
    const made = done(makeChart({ of: 'balance.cg_x', other: first!, lines: 'tail_stock' }, live, library, model));
    const chart = piece(made.document, made.path) as ChartCell;
    expect(chart).toMatchObject({ chart: 'line', across: first, up: ['balance.cg_x'], lines: 'tail_stock' });
    const series = piece(made.document, chart.series) as SweepCell;
    expect(series).toMatchObject({ folded: true, wanted: ['balance.cg_x'] });
    expect(series.axes.map(({ of, count }) => [of, count])).toEqual([
      ['tail_stock', 3],
      [first, 21],
    ]);
    expect(faults(made.document)).toEqual(faults(live.compiled.document));
    expect(made.document.sheets[1]!.pieces.slice(-2).map(({ name }) => name)).toEqual([chart.series, chart.name]);
  });

  test('against a number that is typed makes a variable of it, and says so', () => {
    const made = done(makeChart({ of: 'balance.cg_x', other: 'tail.span', lines: '' }, live, library, model));
    const chart = piece(made.document, made.path) as ChartCell;
    expect(textAt(made.document, 'tail.span')).toBe(chart.across);
    expect(made.done).toMatch(/^Added: CG against .*\. .* slides now, from .* to .*, under “Set these”\.$/);
    expect(made.says[0]).toMatch(/^Makes a slide of /);
    expect(made.says[1]).toMatch(/^Adds the trial series “.*” and the chart “CG against .*” to the sheet “Model”\.$/);
    expect(faults(made.document)).toEqual(faults(live.compiled.document));
  });

  test('against a choice has a bar for each option', () => {
    const made = done(makeChart({ of: 'balance.cg_x', other: 'tail_stock', lines: '' }, live, library, model));
    expect(piece(made.document, made.path)).toMatchObject({ chart: 'bars', across: 'tail_stock' });
    expect(faults(made.document)).toEqual(faults(live.compiled.document));
  });

  test('against something else than what is offered is refused', () => {
    expect(makeChart({ of: 'wing.area', other: 'air.humidity', lines: '' }, live, library, model)).toEqual({
      ok: false,
      message: 'Pick what the chart is drawn against.',
    });
  });

  test('of a key figure settles on a design with a motor too', () => {
    const own = openLive(begun(forms[1]!), library);
    const [of] = own.compiled.document.figures.slice(-1);
    const offer = offerChart(of!, own);
    if (!offer.ok) throw new Error(offer.message);
    const made = done(makeChart({ of: of!, other: offer.others[0]!, lines: '' }, own, library, model));
    expect(faults(made.document)).toEqual(faults(own.compiled.document));
  });
});
