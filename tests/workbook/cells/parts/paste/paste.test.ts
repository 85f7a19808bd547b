import { describe, expect, test } from 'vitest';
import { columnFaults, proposedColumns } from '../../../../../workbook/cells/parts/paste/columns';
import { type PastedParts, readParts } from '../../../../../workbook/cells/parts/paste/read-parts';
import type { Reading } from '../../../../../workbook/cells/parts/paste/read-row';
import type { PasteColumn } from '../../../../../workbook/cells/shared/paste-columns';

const READING: Reading = {
  decimal: '.',
  units: 'metric',
  known: {
    material: [
      { name: 'balsa_medium', title: 'Balsa, medium' },
      { name: 'balsa_light', title: 'Balsa, contest grade' },
    ],
    stack: [{ name: 'tail_stock', title: 'Tail stock' }],
    wire: [{ name: 'wire_1_60', title: 'Music wire, 1.60 mm (0.063 in)' }],
  },
};
const read = (text: string, change: Partial<Reading> = {}, between: ',' | ';' | '\t' = ';'): PastedParts => {
  const reading = { ...READING, ...change };
  const columns = proposedColumns(text.split('\n')[0]!.split(between), reading.units);
  expect(columnFaults(columns)).toEqual([]);
  return readParts(text, between, columns, reading, new Set(['fin', 'mass']));
};
const wrong = (text: string, change: Partial<Reading> = {}): string[] =>
  read(text, change).faults.map(({ line, message }) => `Line ${line}: ${message}`);

describe('columns', () => {
  const matched = (...heading: string[]) => proposedColumns(heading, 'metric').map(({ to, unit }) => [to, unit]);
  test('are matched by their headings, with the unit that stands there or that of the design', () => {
    expect(matched('Part', 'Qty', 'Mass (g)', 'x, mm', 'Y [in]', 'z')).toEqual([
      ['title', ''],
      ['count', ''],
      ['mass', 'g'],
      ['x', 'mm'],
      ['y', 'in'],
      ['z', 'mm'],
    ]);
    expect(proposedColumns(['item', 'weight', 'station'], 'inch_pound').map(({ to, unit }) => [to, unit])).toEqual([
      ['title', ''],
      ['mass', 'oz'],
      ['x', 'in'],
    ]);
  });
  test('that say nothing known, a unit that can’t be, or the same again are left out', () =>
    expect(matched('part', 'colour', 'mass, mm', 'x', 'station')).toEqual([
      ['title', ''],
      ['', ''],
      ['', ''],
      ['x', 'mm'],
      ['', ''],
    ]));
  test('are refused where something lacks or stands twice', () => {
    const column = (head: string, to: string): PasteColumn => ({ head, to, unit: '' });
    expect(columnFaults([column('a', 'mass'), column('b', 'mass'), column('c', 'mass_all')])).toEqual([
      '“a” and “b” are both matched to Mass of one. Leave one of them out.',
      'No column is matched to Part. Match the one that says what each part is.',
      'No column is matched to Station. Match the one that says where each part is.',
      'Mass of one and Mass of all together are both matched. Leave one of them out.',
    ]);
  });
});

describe('rows', () => {
  test('are weights where they have a mass, and each has a name of its own', () => {
    const { parts, faults } = read('part;mass, g;x, mm;y\nFin;12.5;480;\nFin;1/2 oz;-3 in;-20\n');
    expect(faults).toEqual([]);
    expect(parts).toEqual([
      { name: 'fin_2', title: 'Fin', shape: 'point', fields: { mass: '12.5 g', x: '480 mm' } },
      { name: 'fin_3', title: 'Fin', shape: 'point', fields: { mass: '1/2 oz', x: '-3 in', y: '-20 mm' } },
    ]);
  });
  test('of several: “4 screws”, by the mass of one or of all together', () => {
    const one = read('part;quantity;mass;x\nEngine screws;4;1.2;-90').parts[0]!;
    expect(one.fields).toEqual({ count: '4', mass: '1.2 g', x: '-90 mm' });
    const all = read('part;quantity;total mass;x\nEngine screws;4;4.8;-90').parts[0]!;
    expect(all.fields).toEqual({ count: '4', mass: '(4.8 g) ÷ 4', x: '-90 mm' });
    expect(read('part;quantity;mass;x\nSkid;1;1.2;90').parts[0]!.fields).toEqual({ mass: '1.2 g', x: '90 mm' });
  });
  test('with decimal commas, from cells copied in columns', () => {
    const { parts } = read('part\tmass\tx\nFin\t12,5\t480,25 mm', { decimal: ',' }, '\t');
    expect(parts[0]!.fields).toEqual({ mass: '12.5 g', x: '480.25 mm' });
  });
  test('in inches and ounces', () => {
    const { parts } = read('part;mass;x\nFin;0.4;18 7/8', { units: 'inch_pound' });
    expect(parts[0]!.fields).toEqual({ mass: '0.4 oz', x: '18 7/8 in' });
  });
  test('are the shape whose sizes they have, or the one that they say', () => {
    const { parts, faults } = read(
      [
        'part;shape;material;area, cm²;thickness;length;diameter;wall;width;wire;x;weighed',
        'Fin;;Balsa, medium;120;2.5;;;;;;480;',
        'Spar;;balsa_light;;5;900;;;10;;70;8.1 g',
        'Leg;;;;;300;;;;wire_1_60;-20;',
        'Tube;tube;balsa medium;;;500;6;1;;;100;',
        'Handle;;;;;;;;;;10;55',
      ].join('\n'),
    );
    expect(faults).toEqual([]);
    expect(parts.map(({ name, shape }) => [name, shape])).toEqual([
      ['fin_2', 'sheet'],
      ['spar', 'strip'],
      ['leg', 'run'],
      ['tube', 'tube'],
      ['handle', 'point'],
    ]);
    expect(parts[0]!.fields).toEqual({ material: 'balsa_medium', area: '120 cm²', thickness: '2.5 mm', x: '480 mm' });
    expect(parts[1]!.fields.weighed).toBe('8.1 g');
    expect(parts[4]!.fields).toEqual({ x: '10 mm', weighed: '55 g', mass: '55 g' });
  });
  test('of a saved table come without its totals', () => {
    const { parts, totals } = read(
      'part;name;mass, g;estimate, g;x, mm\nFin;rudder;12;12;480\nall parts, fuel as set;parts;850;850;55',
    );
    expect([parts.map(({ name }) => name), totals]).toEqual([['rudder'], 1]);
  });
});

describe('each bad row is told with its line and its reason', () => {
  test('a number that is none, has the other sign, the wrong unit or is out of range', () => {
    const lines = wrong('part;mass;x;thickness\nFin;12,5;480;\nHorn;four;5;\nTab;3;10 g;\nSkid;1;1;-2');
    expect(lines[0]).toBe(
      'Line 2: Mass of one: “12,5” has a comma between its digits, where decimals have a point. Write it so, or choose the other sign.',
    );
    expect(lines[1]).toMatch(/^Line 3: Mass of one: /);
    expect(lines[2]).toMatch(/^Line 4: Station: /);
    expect(lines[3]).toBe('Line 5: Thickness: “-2” is out of range. Allowed: at least 0\u00a0mm.');
    expect(lines).toHaveLength(4);
  });
  test('a part without a title, a mass or a station', () =>
    expect(wrong('part;mass;x\n;12;480\nFin;;480\nHorn;4;\n\nTail;5')).toEqual([
      'Line 2: Part is blank. Write what the part is.',
      'Line 3: “Fin” has no mass, and no sizes from which one comes. Write a mass, or the sizes and material of a shape.',
      'Line 4: “Horn” has no station. Write where it is.',
      'Line 6: has 2 fields; the heading has 3. A field with the separator in it stands in double quotes.',
    ]));
  test('a material or a shape that there is none of, and what a shape lacks', () =>
    expect(
      wrong('part;shape;material;thickness;mass;x\nFin;;balsa;2;1;480\nSkid;hoop;;;1;4\nTab;sheet;balsa_medium;2;;4'),
    ).toEqual([
      'Line 2: Material: there is no material called “balsa”. Near it: Balsa, medium; Balsa, contest grade.',
      'Line 3: Shape: there is no shape called “hoop”. There are: weight, sheet, stack of layers, rod or wire, solid, strip or square, tube, tapered sheet, triangle, ribs, foam core, wire, line or tube.',
      'Line 4: “Tab” lacks its area.',
    ]));
  test('a sum of the others', () =>
    expect(wrong('part;mass;x\nFin;12;480\nTotal;12;')).toEqual([
      'Line 3: “Total” reads as the sum of the others. Remove the line, or call it otherwise.',
    ]));
});
