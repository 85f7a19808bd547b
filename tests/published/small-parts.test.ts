import { describe, expect, it } from 'vitest';
import { type LibraryRow, tables } from '../../engine/library/index';

/* Rows that are computed from recalled sizes, worked out again from these sizes: screws, nuts, washers, tubes, packs; and names by inch. */
const MM = 1e-3;
const INCH = 0.0254;
const STEEL = 7850;
const CIRCLE = Math.PI / 4;
const rows = (table: string): readonly LibraryRow[] => tables.find((each) => each.name === table)!.rows;
/** Rounded to as many digits as the row prints. */
const near = (value: number, computed: number, share: number, what: string): void =>
  expect(Math.abs(value / computed - 1), `${what}: ${value} against ${computed}`).toBeLessThanOrEqual(share);

interface Thread {
  readonly unit: number;
  /** Thread, pitch diameter, minor diameter, head: all across. */
  readonly thread: number;
  readonly pitch: number;
  readonly minor: number;
  readonly head: number;
  /** Nut across flats and its height. */
  readonly flats: number;
  readonly height: number;
}
/** ISO 724, 4032 and 4762; ASME B1.1, B18.3 and B18.6.3 (all recalled). */
const THREADS: Readonly<Record<string, Thread>> = {
  M2: { unit: MM, thread: 2, pitch: 1.74, minor: 1.567, head: 3.8, flats: 4, height: 1.6 },
  'M2.5': { unit: MM, thread: 2.5, pitch: 2.208, minor: 2.013, head: 4.5, flats: 5, height: 2 },
  M3: { unit: MM, thread: 3, pitch: 2.675, minor: 2.459, head: 5.5, flats: 5.5, height: 2.4 },
  M4: { unit: MM, thread: 4, pitch: 3.545, minor: 3.242, head: 7, flats: 7, height: 3.2 },
  '2-56': { unit: INCH, thread: 0.086, pitch: 0.0744, minor: 0.0667, head: 0.14, flats: 3 / 16, height: 1 / 16 },
  '4-40': { unit: INCH, thread: 0.112, pitch: 0.0958, minor: 0.0849, head: 0.183, flats: 1 / 4, height: 3 / 32 },
  '6-32': { unit: INCH, thread: 0.138, pitch: 0.1177, minor: 0.1042, head: 0.226, flats: 5 / 16, height: 7 / 64 },
  '8-32': { unit: INCH, thread: 0.164, pitch: 0.1437, minor: 0.1302, head: 0.27, flats: 11 / 32, height: 1 / 8 },
};
const ofKind = (kind: string) => rows('small_parts').filter(({ words }) => words.kind === kind);
const computed = (kind: string, title: RegExp) =>
  ofKind(kind).flatMap((row) => {
    const found = title.exec(row.title);
    return found ? [[row.title, row, THREADS[found[1]!]!] as const] : [];
  });

describe('screws', () => {
  const screws = computed('screws', /^Screw, (\S+) ×/);
  it.each(screws)('%s', (title, { values }, { unit, thread, pitch, head }) => {
    near(values.diameter!, thread * unit, 1e-9, 'diameter');
    const [, inches, part] = /× (?:(\d+) )?(\d+(?:\/\d+)?) (?:mm|in)$/.exec(title)!;
    const [over, under = 1] = part!.split('/').map(Number);
    near(values.length!, (Number(inches ?? 0) + over! / under) * unit, 1e-9, 'length');
    const shank = CIRCLE * (pitch * unit) ** 2 * values.length!;
    const socket = 0.1;
    near(values.mass!, STEEL * (shank + (1 - socket) * CIRCLE * (head * unit) ** 2 * thread * unit), 0.005, 'mass');
  });
  it('are 29, of every thread', () => {
    expect(screws).toHaveLength(29);
    expect(new Set(screws.map(([, , thread]) => thread)).size).toBe(8);
  });
});

describe('nuts', () => {
  const nuts = computed('nuts', /^Nut, (\S+)$/);
  it.each(nuts)('%s', (_, { values }, { unit, thread, minor, flats, height }) => {
    near(values.diameter!, thread * unit, 1e-9, 'diameter');
    const face = (Math.sqrt(3) / 2) * flats ** 2 - CIRCLE * minor ** 2;
    near(values.mass!, STEEL * face * height * unit ** 3, 0.005, 'mass');
  });
  it('are eight', () => expect(nuts).toHaveLength(8));
});

/** Outer and inner diameter and thickness, mm: ISO 7089 (recalled). */
const WASHERS: Readonly<Record<string, readonly [number, number, number]>> = {
  M2: [5, 2.2, 0.3],
  'M2.5': [6, 2.7, 0.5],
  M3: [7, 3.2, 0.5],
  M4: [9, 4.3, 0.8],
  M5: [10, 5.3, 1],
};
describe('washers', () => {
  it.each(ofKind('washers').map((row) => [row.title, row] as const))('%s', (title, { values }) => {
    const [outer, inner, thick] = WASHERS[title.slice('Washer, '.length)]!;
    near(values.mass!, STEEL * CIRCLE * (outer ** 2 - inner ** 2) * thick * MM ** 3, 0.005, 'mass');
  });
});

describe('tubes', () => {
  const materials = rows('materials');
  const stuff = { fuel: 'silicone_rubber', brass: 'brass', aluminium: 'aluminium', carbon: 'carbon_laminate' } as const;
  it.each(rows('tubes').map((row) => [row.name, row] as const))('%s', (name, { values }) => {
    const { diameter, bore, linear_mass } = values;
    expect(bore!).toBeLessThan(diameter!);
    const material = stuff[name.split('_')[0] as keyof typeof stuff];
    const density = materials.find((each) => each.name === material)!.values.density!;
    near(linear_mass!, density * CIRCLE * (diameter! ** 2 - bore! ** 2), 0.0005, 'mass per length');
  });
});

describe('packs', () => {
  it.each(rows('packs').map((row) => [row.title, row] as const))('%s', (title, { values }) => {
    const { cells, capacity, voltage, pack_resistance, mass } = values;
    const hours = capacity! / 3600;
    expect(title).toBe(`${cells} cells, ${Math.round(hours * 1000)} mAh`);
    near(voltage!, 3.8 * cells!, 1e-9, 'voltage');
    expect(Math.abs(pack_resistance! - (0.012 * cells!) / hours - 0.005)).toBeLessThanOrEqual(0.00051);
    // 27 to 31 g a cell and ampere-hour, and some of leads and plug.
    const each = (mass! * 1000) / (cells! * hours);
    expect(each).toBeGreaterThanOrEqual(27);
    expect(each).toBeLessThanOrEqual(34);
  });
});

describe('sizes of the trade', () => {
  it.each(rows('stock').map((row) => [row.title, row] as const))('%s', (title, { values }) => {
    const unit = title.endsWith(' mm') ? MM : INCH;
    const said = title
      .replace(/^\w+, /, '')
      .replace(/ (mm|in)$/, '')
      .split(' × ')
      .map((text) => {
        const [over, under = 1] = text.split('/').map(Number);
        return (over! / under) * unit;
      });
    near(values.thickness!, said[0]!, 1e-9, 'thickness');
    near(values.length!, said.at(-1)!, 1e-9, 'length');
    if (said.length === 3) near(values.width!, said[1]!, 1e-9, 'width');
  });
});

describe('names by inch', () => {
  const named = (table: string) => rows(table).filter(({ inchTitle }) => inchTitle !== undefined);
  it.each(named('wire').map((row) => [row.inchTitle!, row] as const))('%s', (inchTitle, { values }) => {
    const [, fraction, decimal] = /^Music wire, (?:(\d+\/\d+) in \(([\d.]+) in\)|[\d.]+ in)$/.exec(inchTitle)!;
    if (fraction === undefined) return near(values.diameter!, Number(/[\d.]+/.exec(inchTitle)![0]) * INCH, 1e-9, '');
    const [over, under] = fraction.split('/').map(Number);
    near(values.diameter!, Number(decimal) * INCH, 1e-9, 'diameter');
    // Drawn sizes lie beside the fractions by which they are sold: a fortieth at most.
    near(values.diameter!, (over! / under!) * INCH, 0.026, 'fraction');
  });
  it('has every music wire and line, and the fractions that gear is bent from', () => {
    const wires = named('wire');
    expect(wires).toHaveLength(rows('wire').filter(({ words }) => words.group === 'music wire').length);
    expect(named('line_kinds')).toHaveLength(rows('line_kinds').length);
    const fractions = wires.flatMap(({ inchTitle }) => /\d+\/\d+/.exec(inchTitle!) ?? []);
    expect(fractions).toEqual(['1/64', '1/32', '3/64', '1/16', '5/64', '3/32', '7/64', '1/8']);
  });
  it.each(named('line_kinds').map((row) => [row.inchTitle!, row] as const))('%s', (inchTitle, { values }) =>
    near(values.diameter!, Number(/([\d.]+) in$/.exec(inchTitle)![1]) * INCH, 1e-9, 'diameter'),
  );
});
