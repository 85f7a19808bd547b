import { expect, test } from 'vitest';
import { serialise } from '../../../../engine/sheet/file';
import { faultsOfLive, numberAt, openLive } from '../../../../engine/sheet/live';
import { textAt } from '../../../../engine/sheet/paths';
import { cellsOf } from '../../../../engine/sheet/sheets';
import { hangarOf } from '../../../../engine/study/hangar/index';
import type { PieceOffer } from '../../../../engine/study/hangar/told';
import { library } from '../../../../engine/study/library';
import { begun } from './begun';

const hangar = hangarOf(library);
const owl = begun();
const heron = begun({
  title: 'Heron',
  span: '49 1/4"',
  size: '.35 cu in',
  line_length: "65'",
  line_diameter: '0.018 in',
});
const its = openLive(heron, library);

const taken = async (piece: Partial<PieceOffer>, to = owl, from = heron) => {
  const answer = await hangar.take(to, serialise(from), { of: 'part', name: '', title: '', says: '', ...piece });
  if (!answer.ok) throw new Error(answer.message);
  return { ...answer, live: openLive(answer.document, library) };
};
const faults = (live: ReturnType<typeof openLive>) =>
  faultsOfLive(live)
    .filter(({ state }) => state === 'fault')
    .map(({ message }) => message);

test('a design offers its engine, lines, sheets and parts', async () => {
  const offers = (await hangar.offers(serialise(heron)))!;
  expect(
    offers.slice(0, 8).map(({ of, name, title, says }) => `${of} ${name}: ${title} (${says})`),
  ).toMatchInlineSnapshot(`
    [
      "engine engine: Engine by its pull at rest (engine or motor)",
      "lines lines: Lines (line set)",
      "sheet s1: Decide (sheet, 16 pieces)",
      "sheet s2: Model (sheet, 9 pieces)",
      "sheet s3: Weights (sheet, 3 pieces)",
      "part parts.wing_part: Wing, covered (part, 11.2 oz)",
      "part parts.fuselage: Fuselage, painted (part, 10.3 oz)",
      "part parts.stabiliser: Stabiliser (part, 1.18 oz)",
    ]
  `);
  expect(await hangar.offers('{')).toBeUndefined();
});

test('lines come as they are there, by the slides that set them here', async () => {
  const { document, live, done } = await taken({ of: 'lines', name: 'lines' });
  for (const result of ['diameter', 'linear_mass', 'count']) {
    expect(numberAt(live, `lines.${result}`)).toBeCloseTo(numberAt(its, `lines.${result}`), 6);
  }
  expect(textAt(document, 'lines.length')).toBe('line_length');
  expect(textAt(document, 'line_length')).toBe(textAt(heron, 'line_length'));
  expect(done).toMatchInlineSnapshot(
    `"“Lines” of “Heron” stands in the place of “Lines” now, its numbers as they are there. Set with it: line length."`,
  );
  expect(faults(live)).toEqual(faults(openLive(owl, library)));
});

test('an engine comes into the place that the design has for one', async () => {
  const { document, live, done } = await taken({ of: 'engine', name: 'engine' });
  expect(numberAt(live, 'engine.propeller_diameter')).toBeCloseTo(numberAt(its, 'engine.propeller_diameter'), 3);
  expect(textAt(document, 'engine.station')).toBe('engine_station');
  expect(textAt(document, 'engine_station')).toBe(textAt(owl, 'engine_station'));
  expect(cellsOf(document)).toHaveLength(cellsOf(owl).length);
  expect(done).toMatchInlineSnapshot(
    `"“Engine by its pull at rest” of “Heron” stands in the place of “Engine by its pull at rest” now, its numbers as they are there. Its weight came with it: “Engine with silencer”, 9.809 oz, in the place of “Engine with silencer”. Not taken with it: “Tank, empty”, “Fuel, tank full” and “Propeller with nut”."`,
  );
  // Its weight stands where that of the old one stood.
  expect(numberAt(live, 'parts.engine_part.mass')).toBeCloseTo(numberAt(its, 'parts.engine_part.mass'), 4);
  expect(textAt(document, 'parts.engine_part.x')).toBe('engine_station');
  expect(faults(live)).toEqual(faults(openLive(owl, library)));
});

test('where there is no engine it stands as one piece more, under a name that is free', async () => {
  const sheets = [{ id: 's1', title: 'Decide', pieces: [] }];
  const { document, done } = await taken({ of: 'engine', name: 'engine' }, { ...owl, sheets, figures: [] });
  expect(cellsOf(document).map(({ name }) => name)).toEqual(['engine']);
  expect(textAt(document, 'engine.station')).toMatch(/in$/);
  expect(done).toMatchInlineSnapshot(
    `"“Engine by its pull at rest” of “Heron” stands on “Decide” now, its numbers as they are there. Its weight is a row of the parts: take or type that too. Not taken with it: “Tank, empty”, “Fuel, tank full” and “Propeller with nut”."`,
  );
});

test('a part comes with its numbers under a name of its own', async () => {
  const { document, live, done } = await taken({ name: 'parts.engine_part' });
  const table = cellsOf(document).find((cell) => cell.kind === 'parts')!;
  expect(table.rows.at(-1)!.name).toBe('engine_part_2');
  expect(numberAt(live, 'parts.engine_part_2.mass')).toBeCloseTo(numberAt(its, 'parts.engine_part.mass'), 4);
  expect(numberAt(live, 'parts.engine_part_2.x')).toBeCloseTo(numberAt(its, 'parts.engine_part.x'), 4);
  expect(done).toMatchInlineSnapshot(
    `"“Engine with silencer” of “Heron” stands at the end of “Weight and balance” now, its numbers as they are there."`,
  );
});

test('a part that is made of something the design does not have comes as a weight', async () => {
  const pieces = (id: string) =>
    owl.sheets.map((sheet) => ({ ...sheet, pieces: sheet.pieces.filter(({ name }) => name !== id) }));
  const { document, live, done } = await taken({ name: 'parts.stabiliser' }, { ...owl, sheets: pieces('tail_stock') });
  const part = cellsOf(document)
    .find((cell) => cell.kind === 'parts')!
    .rows.at(-1)!;
  expect([part.shape, part.fields.stack]).toEqual(['point', undefined]);
  expect(numberAt(live, 'parts.stabiliser_2.mass')).toBeCloseTo(numberAt(its, 'parts.stabiliser.mass'), 5);
  expect(done).toMatchInlineSnapshot(
    `"“Stabiliser” of “Heron” stands at the end of “Weight and balance” now, its numbers as they are there. What it is made of is not in this design, so it came as a weight."`,
  );
});

test('a sheet comes behind the others, and what is not there is said', async () => {
  const sheet = heron.sheets.at(-1)!;
  const { document, sheet: id, done } = await taken({ of: 'sheet', name: sheet.id, title: sheet.title });
  expect(document.sheets.at(-1)!.id).toBe(id);
  expect(document.sheets).toHaveLength(owl.sheets.length + 1);
  expect(done).toBe(
    'The sheet “Weights” stands behind the others now. What it says of the rest reads what has the name here.',
  );
  const gone = { ok: false, message: 'That design has no such piece any more. Nothing was taken.' };
  for (const of of ['sheet', 'part', 'engine'] as const) {
    expect(await hangar.take(owl, serialise(heron), { of, name: 'gone', title: '', says: '' })).toEqual(gone);
  }
  const none = { ...owl, sheets: [{ id: 's1', title: 'Decide', pieces: [] }] };
  expect(await hangar.take(none, serialise(heron), { of: 'part', name: 'parts.fin', title: '', says: '' })).toEqual({
    ok: false,
    message: 'This design has no table of parts. Add one by “Add a piece”, then take the part.',
  });
});
