import { expect, test } from 'vitest';
import { serialise } from '../../../../engine/sheet/file';
import { numberAt, openLive } from '../../../../engine/sheet/live';
import { putText } from '../../../../engine/sheet/paths';
import { hangarOf } from '../../../../engine/study/hangar/index';
import { library } from '../../../../engine/study/library';
import { formatQuantity } from '../../../../engine/units/index';
import { begun, begunText } from './begun';

const hangar = hangarOf(library);

const said = async (text: string) => {
  const told = (await hangar.tellDesign(text))!;
  const lines = told.figures.map(
    ({ of, title, value, unit, suffix, ways }) => `${of}: ${title}, ${formatQuantity(value, unit, { suffix, ways })}`,
  );
  return { kind: told.kind, lines };
};

test('a design is told with the figures that its flight gives, in its own units', async () => {
  expect(await said(begunText())).toMatchInlineSnapshot(`
    {
      "kind": "Engine by its pull at rest",
      "lines": [
        "parts.mass: All-up weight, 789 g",
        "flight.pull: Line pull, 19.4 N",
        "flight.pull_per_weight: Pull, 2.50 × weight",
        "flight.lap_time: Lap time, 5.51 s",
        "wing.span: Span, 1000 mm",
        "wing.area: Wing area, 20 dm²",
        "balance.cg_x: CG, 39.9 mm",
        "balance.cg_share: CG on the mean chord, 19.9 %",
        "balance.static_margin: Static margin, 21.9 %",
        "engine.station: Engine station, −130 mm",
        "engine.propeller_diameter: Propeller diameter, 229 mm",
        "lines.eyelet_length: Eyelet to eyelet, 18.1 m",
        "lines.diameter: Line diameter, 0.38 mm",
        "lines.count: Lines, 2",
        "flight.nose_out: Nose angle, 1.0° out",
        "flight.outboard_low: Outboard wing, 0.16° high",
        "flight.test_margin: Pull test over calm pull, 3.93",
        "flight.breaking_margin: Breaking load over calm pull, 18.0",
      ],
    }
  `);
  expect(await said(begunText({ span: '49 1/4"', size: '.35 cu in' }))).toMatchInlineSnapshot(`
    {
      "kind": "Engine by its pull at rest",
      "lines": [
        "parts.mass: All-up weight, 44.2 oz",
        "flight.pull: Line pull, 6.5 lbf",
        "flight.pull_per_weight: Pull, 2.35 × weight",
        "flight.lap_time: Lap time, 5.97 s",
        "wing.span: Span, 49.3 in",
        "wing.area: Wing area, 485 in²",
        "balance.cg_x: CG, 1.97 in",
        "balance.cg_share: CG on the mean chord, 20.0 %",
        "balance.static_margin: Static margin, 21.8 %",
        "engine.station: Engine station, −8.15 in",
        "engine.propeller_diameter: Propeller diameter, 10.1 in",
        "lines.eyelet_length: Eyelet to eyelet, 65.3 ft",
        "lines.diameter: Line diameter, 0.015 in",
        "lines.count: Lines, 2",
        "flight.nose_out: Nose angle, 1.0° out",
        "flight.outboard_low: Outboard wing, 0.14° high",
        "flight.test_margin: Pull test over calm pull, 4.22",
        "flight.breaking_margin: Breaking load over calm pull, 12.1",
      ],
    }
  `);
});

test('they are those of the design when it is open', async () => {
  const document = begun();
  const told = await hangar.tellDesign(serialise(document));
  const live = openLive(document, library);
  for (const of of ['parts.mass', 'flight.pull', 'flight.lap_time']) {
    expect(told!.figures.find((each) => each.of === of)!.value).toBe(numberAt(live, of));
  }
  expect(new Set(told!.drawing.map(({ view }) => view))).toEqual(new Set(['plan', 'side']));
});

test('the class is told where one is typed, and of an empty design nothing', async () => {
  expect((await said(serialise({ ...begun(), class: 'Club racer' }))).kind).toBe('Club racer');
  const empty = { ...begun(), sheets: [{ id: 's1', title: 'Decide', pieces: [] }] };
  expect(await hangar.tellDesign(serialise(empty))).toEqual({ kind: '', figures: [], drawing: [] });
  expect(await hangar.tellDesign('{')).toBeUndefined();
});

test('two designs are told apart by what is typed in them and by what only one has', async () => {
  const text = begunText();
  expect(await hangar.tellApart(text, text)).toEqual({ texts: [], here: [], there: [] });
  expect(await hangar.tellApart(text, '')).toBeUndefined();
  expect(await hangar.tellApart(text, begunText({ tail_stock: 'balsa_ply' }))).toMatchInlineSnapshot(`
    {
      "here": [],
      "texts": [
        {
          "here": "-130 mm",
          "there": "-141 mm",
          "title": "engine station",
        },
        {
          "here": "75 mm",
          "there": "74 mm",
          "title": "leadout guide",
        },
        {
          "here": "balsa",
          "there": "balsa_ply",
          "title": "Tail stock",
        },
      ],
      "there": [],
    }
  `);
});

test('the same number in another unit is not typed otherwise, another number is', async () => {
  const typed = (tail: string, tip: string): string => {
    const put = putText(putText(begun(), 'tail_weight', tail)!, 'tip_weight', tip)!;
    return serialise(put);
  };
  const told = (await hangar.tellApart(typed('0 g', '25.4 g'), typed('0 oz', '0.0254 kg')))!;
  expect(told.texts).toEqual([]);
  expect((await hangar.tellApart(typed('0 g', '20 g'), typed('0 oz', '1 oz')))!.texts).toEqual([
    { title: 'tip weight', here: '20 g', there: '1 oz' },
  ]);
});
