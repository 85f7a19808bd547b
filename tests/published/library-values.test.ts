import { describe, expect, it } from 'vitest';
import { type LibraryRow, oftenForgotten, tables } from '../../engine/library/index';
import { propellers } from '../../engine/library/tables/propellers';
import { sectionPoints } from '../../engine/library/tables/section-points';
import { csvRows } from './aero-rows';

/*
 * Every number of the library a second time, so that a slip of the pen in `data/` is found: as it stands in the source that the row names,
 * written down once more with what was recalled, or as copied published rows give it. Wire, cable and lines: `wire-rows.test.ts`.
 */
const INCH = 0.0254;
const TURN = 2 * Math.PI;
const DEGREE = Math.PI / 180;
/** Exact, by definition of the units. */
const UNITS: Readonly<Record<string, number>> = {
  '': 1,
  '%': 0.01,
  '°': DEGREE,
  '1/°': 1 / DEGREE,
  m: 1,
  cm: 0.01,
  mm: 0.001,
  in: INCH,
  ft: 0.3048,
  'cm³': 1e-6,
  'in³': INCH ** 3,
  kg: 1,
  g: 0.001,
  oz: 0.028349523125,
  'kg/m³': 1,
  'g/m²': 0.001,
  GPa: 1e9,
  N: 1,
  N·m: 1,
  W: 1,
  A: 1,
  mΩ: 0.001,
  rpm: TURN / 60,
  'rpm/V': TURN / 60,
  V: 1,
  mAh: 3.6,
  'g/m': 0.001,
};
const table = (name: string): readonly LibraryRow[] => tables.find((each) => each.name === name)!.rows;
const numbersOf = ({ values }: LibraryRow) => Object.entries(values).filter(([, value]) => !Number.isNaN(value));
const near = (value: number, printed: number, what: string): void => {
  expect(Math.abs(value - printed), `${what}: ${value} against ${printed}`).toBeLessThan(
    1e-12 * Math.abs(value) + 1e-300,
  );
};

describe('as their sources give them', () => {
  const copy = new Map(csvRows('library_values.csv').map((row) => [`${row.row} ${row.column}`, row]));
  const WRITTEN_TWICE = [
    ...['materials', 'finishes', 'engines', 'motors', 'class_rules', 'sections'],
    ...['packs', 'small_parts', 'tubes', 'stock'],
  ];
  const forgotten = oftenForgotten.map(({ name, title, memory, source, mass }) => {
    return { name, title, memory, source, words: {}, values: { mass } } satisfies LibraryRow;
  });
  const written: readonly LibraryRow[] = [...WRITTEN_TWICE.flatMap(table), ...forgotten];
  it.each(written.map((row) => [row.name, row] as const))('%s', (name, row) => {
    const known = Object.keys(UNITS);
    for (const [column, value] of numbersOf(row)) {
      if (column === 'fuel') continue;
      const said = copy.get(`${name} ${column}`);
      expect(said, `${name} ${column} in library_values.csv`).toBeDefined();
      expect(known).toContain(said!.unit);
      const unit = UNITS[said!.unit!]!;
      near(value, Number(said!.value) * unit, `${name} ${column}`);
    }
  });
  it.each(written.map((row) => [row.name, row] as const))('%s, marked if recalled', (name, row) => {
    const recalled = numbersOf(row).filter(([column]) => copy.get(`${name} ${column}`)?.memory === 'true');
    expect(row.memory).toBe(recalled.length > 0);
  });
  it('with none left over', () => {
    const rows = new Map<string, LibraryRow>(written.map((row) => [row.name, row]));
    for (const { row, column } of copy.values()) {
      expect(rows.get(row!)?.values[column!], `${row} ${column}`).not.toBeNaN();
      expect(rows.get(row!)?.values[column!], `${row} ${column}`).toBeDefined();
    }
  });
  it('within the band that the source itself names', () => {
    let bands = 0;
    /** Rows that are of several pieces, where the source says what one is. */
    const ofSeveral = Object.fromEntries(oftenForgotten.map(({ name }) => [name, true]));
    const columns = { 'kg/m³': 'density', 'g/m²': 'areal_mass', GPa: 'modulus', g: 'mass' } as const;
    for (const { name, source, values } of written) {
      for (const [, low, high, unit, each] of source.matchAll(
        /([\d.]+) to ([\d.]+) (kg\/m³|g\/m²|GPa|g)(?= each| for|[ ,;]|$)( each)?/g,
      )) {
        const value = values[columns[unit as keyof typeof columns]];
        // What is spread wet, or a part of a mixture, is no band of the row's own number.
        if (value === undefined || (each && name in ofSeveral) || /spread|its glue|cloth and/.test(source)) continue;
        bands++;
        expect(value / UNITS[unit!]!, `${name}: ${source}`).toBeGreaterThanOrEqual(Number(low));
        expect(value / UNITS[unit!]!, `${name}: ${source}`).toBeLessThanOrEqual(Number(high));
      }
    }
    expect(bands).toBeGreaterThan(80);
  });
});

/* As in `aero_section_low_re.csv`, whose rows name their sources. */
describe('sections by Reynolds number', () => {
  const rows = csvRows('aero_section_low_re.csv');
  const read = (text: string | undefined): number => (text ? Number(text) : Number.NaN);
  it.each(sectionPoints.rows.map((row) => [row.title, row] as const))('%s', (title, { values, words }) => {
    const reynolds = Number(/at Re ([\d ]+)$/.exec(title)![1]!.replaceAll(/\s/g, ''));
    const row = rows.find((each) => each.section === words.group && Number(each.reynolds) === reynolds)!;
    const columns = ['thickness', 'reynolds', 'slope', 'lift_limit', 'drag_0', 'drag_4', 'drag_8'];
    expect(Object.keys(values).filter((column) => column !== 'surface')).toEqual(columns);
    expect(values.reynolds).toBe(reynolds);
    near(values.thickness!, Number(words.group!.slice(-2)) / 100, 'thickness');
    expect(title.startsWith(words.group!)).toBe(true);
    const slope = read(row.cl_alpha_per_deg_0_to_4deg);
    if (Number.isNaN(slope)) expect(values.slope).toBeNaN();
    else near(values.slope! * DEGREE, slope, 'slope');
    expect(values.lift_limit).toBe(read(row.cl_max_first_stall));
    expect(values.drag_0).toBe(read(row.cd_at_0deg));
    expect(values.drag_4).toBe(read(row.cd_at_4deg));
    expect(values.drag_8).toBe(read(row.cd_at_8deg));
  });
});

/*
 * Plywood of three equal plies with the modulus across the grain 0.05 of that along it (USDA FPL, Wood Handbook, table 5-1, yellow birch, recalled):
 * stretched, (2 E + E')/3 along the face and (E + 2 E')/3 across; bent, (26 E + E')/27 and (E + 26 E')/27, about 11 : 1.
 */
describe('plywood', () => {
  const values = (name: string) => table('materials').find((row) => row.name === name)!.values;
  it.each(['birch_ply', 'light_ply', 'birch_ply_thin'])('%s bends along its face by its outer plies', (name) => {
    const { modulus, bending_modulus } = values(name);
    const ply = (3 * modulus!) / 2.05;
    expect(Math.abs(bending_modulus! / ((26.05 / 27) * ply) - 1)).toBeLessThan(0.01);
  });
  it.each(['birch_ply', 'light_ply'])('%s bends across its face by its middle ply: about 11 : 1', (name) => {
    const along = values(name).bending_modulus! / (26.05 / 27);
    const across = values(`${name}_across`).bending_modulus!;
    expect(Math.abs(across / (along * ((1 + 26 * 0.05) / 27)) - 1)).toBeLessThan(0.02);
    expect(values(name).bending_modulus! / across).toBeGreaterThan(10);
  });
});

describe('propellers', () => {
  it.each(propellers.rows.map((row) => [row.title, row] as const))('%s', (title, { name, values }) => {
    const [, diameter, pitch] = /^(\d+)×(\d+)/.exec(title)!;
    expect(name).toContain(`${diameter}x${pitch}`);
    near(values.diameter!, Number(diameter) * INCH, 'diameter');
    near(values.pitch!, Number(pitch) * INCH, 'pitch');
  });
});

/* A covering with its dope is the bare covering and so many thin coats, each a row of the same table. */
describe('doped coverings', () => {
  const COATS = ['', '', 'two', 'three', 'four', 'five', 'six', '', 'eight'];
  const rows = table('finishes');
  const mass = (name: string): number => rows.find((row) => row.name === name)!.values.areal_mass!;
  const doped = rows.filter(({ name }) => name.includes('_doped_'));
  it.each(doped.map((row) => [row.name, row] as const))('%s', (name, row) => {
    const [, bare, coats] = /^(\w+)_doped_(\d)$/.exec(name)!;
    near(row.values.areal_mass!, mass(bare!) + Number(coats) * mass('dope_clear'), name);
    expect(row.title).toContain(`with ${COATS[Number(coats)]} coats of clear dope`);
  });
  it('are seven', () => expect(doped).toHaveLength(7));
});

it('every table is held here', () => {
  const held = [
    ...['materials', 'finishes', 'engines', 'motors', 'class_rules', 'wire', 'line_kinds', 'sections'],
    ...['packs', 'small_parts', 'tubes', 'stock'],
  ];
  expect(
    tables.map(({ name }) => name).filter((name) => ![...held, 'section_points', 'propellers'].includes(name)),
  ).toEqual([]);
});
