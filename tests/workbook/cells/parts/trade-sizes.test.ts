import { describe, expect, test } from 'vitest';
import type { Part, PartShape } from '../../../../engine/index';
import { tables } from '../../../../engine/library/index';
import { describeTable } from '../../../../engine/study/describe/tables';
import { sizeTexts, tradeSizes } from '../../../../workbook/cells/parts/trade-sizes';
import { rowsWith } from '../../../../workbook/library/rows-pick';

const described = (name: string) => describeTable(tables.find((each) => each.name === name)!);
const { rows } = described('stock');
const row = (name: string) => rows.find((each) => each.name === name)!;
const part = (shape: PartShape): Part => ({ name: 'it', title: 'It', shape, fields: {} });

describe('sizes of the trade', () => {
  test('are those of the shape, the design’s own units first', () => {
    const strips = tradeSizes('strip', rows, 'inch_pound').map(({ title }) => title);
    expect(strips[0]).toBe('Square, 1/16 × 1/16 × 36 in');
    expect(tradeSizes('strip', rows, 'metric')[0]!.title).toBe('Square, 2 × 2 × 1000 mm');
    expect(tradeSizes('strip', rows, 'metric')).toHaveLength(strips.length);
    expect(new Set(tradeSizes('ribs', rows, 'metric').map(({ group }) => group))).toEqual(new Set(['sheets', 'ply']));
    expect(tradeSizes('solid', rows, 'metric')).toEqual([]);
  });
  test('are written as the trade writes them', () => {
    expect(sizeTexts(part('sheet'), row('sheet_3_32'))).toEqual([['thickness', '3/32 in']]);
    expect(sizeTexts(part('sheet'), row('sheet_2_5_mm'))).toEqual([['thickness', '2.5 mm']]);
    expect(sizeTexts(part('strip'), row('strip_1_4_1'))).toEqual([
      ['width', '1 in'],
      ['thickness', '1/4 in'],
    ]);
    expect(sizeTexts(part('rod'), row('dowel_3_16'))).toEqual([['diameter', '3/16 in']]);
    expect(sizeTexts(part('triangle'), row('triangle_10_mm'))).toEqual([
      ['width', '10 mm'],
      ['height', '10 mm'],
    ]);
    expect(sizeTexts(part('tapered'), row('sheet_1_2'))).toEqual([['thickness', '1/2 in']]);
  });
});

test('rows of several tables that give a mass per length stand by their groups, wire by its fraction in inches', () => {
  const runs = ['wire', 'tubes', 'line_kinds'].map(described);
  const own = { table: 'tubes', name: 'my_tube', title: 'My tube', source: 'weighed', values: {} };
  const offered = rowsWith(runs, 'linear_mass', [own], 'inch_pound');
  expect(offered[0]).toEqual({ value: 'my_tube', title: 'My tube', group: 'own, of this design' });
  expect(offered).toContainEqual({
    value: 'wire_1_60',
    title: 'Music wire, 1/16 in (0.063 in)',
    group: 'library: music wire',
    detail: '0.169\u00a0oz/ft',
  });
  expect(offered).toContainEqual({
    value: 'fuel_tube_medium',
    title: 'Fuel tube, medium, 3/16 × 3/32 in',
    group: 'library: fuel tube',
    detail: '0.182\u00a0oz/ft',
  });
  const packs = rowsWith([described('packs'), described('motors')], 'mass', [], 'metric');
  expect(new Set(packs.map(({ group }) => group))).toEqual(
    new Set(['library: battery packs', 'library: electric motors']),
  );
  expect(
    rowsWith([described('small_parts')], 'volume', [], 'metric').every(({ title }) => title.startsWith('Tank')),
  ).toBe(true);
});
