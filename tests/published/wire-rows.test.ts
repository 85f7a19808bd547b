import { describe, expect, it } from 'vitest';
import { lineKinds } from '../../engine/library/tables/line-kinds';
import { materials } from '../../engine/library/tables/materials';
import { wire } from '../../engine/library/tables/wire';
import { LINE_KINDS, lineLinearMass, musicWireModuli } from '../../engine/physics/index';
import { csvRows, jsonOf } from './aero-rows';

/* Every number of the library on wire, cable and lines, worked out again from published rows. */
const INCH = 0.0254;
const POUND_FORCE = 4.4482216152605;
const KSI = (1000 * POUND_FORCE) / INCH ** 2;
const CIRCLE = Math.PI / 4;
const near = (value: number, printed: number, half: number, what: string): void => {
  expect(Math.abs(value - printed), `${what}: ${value} against ${printed}`).toBeLessThanOrEqual(half);
};

/*
 * ASTM A228/A228M tensile requirement, reprinted on a wire maker's page, in ksi; moduli by J. E. Shigley (Budynas and Nisbett), table 10-5;
 * 7800 kg/m³.
 */
describe('music wire', () => {
  const least = new Map([
    ...csvRows('wire_astm_a228_tensile.csv').map(
      (row) => [Number(row.diameter_in), Number(row.min_tensile_ksi)] as const,
    ),
    ...csvRows('wire_more.csv')
      .filter((row) => row.kind === 'music wire')
      .map((row) => [Number(row.size_in), Number(row.min)] as const),
  ]);
  const density = jsonOf('wire_constants.json').density_kg_m3['music wire'];
  /** From its name: "Music wire, 0.25 mm (0.010 in)". */
  const inches = (title: string): number => Number(/\(([\d.]+) in\)/.exec(title)![1]);
  const check = (title: string, values: Readonly<Record<string, number>>): void => {
    const size = inches(title);
    const d = size * INCH;
    const strength = least.get(size)! * KSI;
    near(values.diameter!, d, 1e-12, 'diameter');
    expect(Math.abs(Number(/([\d.]+) mm/.exec(title)![1]) - d * 1000)).toBeLessThanOrEqual(0.0051);
    if (values.strength !== undefined) near(values.strength, strength, 0.55e6, 'strength');
    if (values.modulus !== undefined) near(values.modulus, musicWireModuli(d).young, 1e3, 'modulus');
    near(values.breaking_load! / (strength * CIRCLE * d * d), 1, 3e-4, 'breaking load');
    near(values.linear_mass! / (density * CIRCLE * d * d), 1, 1e-3, 'mass');
  };
  const rows = wire.rows.filter(({ words }) => words.group === 'music wire');
  it.each(rows.map((row) => [row.title, row] as const))('%s', (title, { values }) => check(title, values));
  it.each(lineKinds.rows.filter(({ name }) => name.startsWith('solid_')).map((row) => [row.title, row] as const))(
    '%s',
    (title, { values }) => {
      const { kind: _kind, drag_coefficient, ...measured } = values;
      expect(drag_coefficient).toBeNaN();
      check(title, measured);
    },
  );
  it('has rows enough to say so', () => expect(rows.length).toBeGreaterThan(20));
});

/* FAA AC 43.13-1B, tables 7-3 and 7-4, lbf. */
describe('cable', () => {
  const share = (text: string): number => {
    const [over, under] = text.split('/') as [string, string];
    return Number(over) / Number(under);
  };
  /** By size, make and steel. */
  const rated = new Map<string, number>();
  const MASSES: Readonly<Record<string, number>> = {
    '3x7 1/32': 0.16,
    '7x7 3/64': 0.42,
    '7x7 1/16': 0.75,
    '7x19 1/16': 0.75,
    '7x7 3/32': 1.6,
    '7x19 3/32': 1.74,
    '7x19 1/8': 2.9,
    '1x7 1/32': 0.25,
    '1x7 3/64': 0.55,
    '1x19 1/16': 0.85,
  };
  for (const row of csvRows('wire_aircraft_cable.csv')) {
    const name = `${row.construction} ${row.nominal_diameter_in}`;
    rated.set(`${name} carbon`, Number(row.min_breaking_carbon_lbf));
    rated.set(`${name} stainless`, Number(row.min_breaking_CRES_lbf));
  }
  for (const row of csvRows('wire_more.csv')) {
    const [, make, steel] = /^cable (\S+) (\S+)$/.exec(row.kind!) ?? [];
    if (make) rated.set(`${make} ${row.size_in} ${steel}`, Number(row.min));
  }
  const rows = wire.rows.filter(({ words }) => words.group === 'cable');
  it.each(rows.map((row) => [row.title, row] as const))('%s', (title, { values, memory }) => {
    const [, make, size] = /(\dx\d+), (\d+\/\d+) in/.exec(title)!;
    const steel = /tainless/.test(title) ? 'stainless' : 'carbon';
    near(values.diameter!, share(size!) * INCH, 1e-12, 'diameter');
    near(values.breaking_load! / POUND_FORCE, rated.get(`${make} ${size} ${steel}`)!, 0.01, 'breaking load');
    // Pounds for 100 ft in the same tables, all recalled, so that every row is marked.
    const mass = MASSES[`${make} ${size}`]!;
    near(values.linear_mass! / ((mass * 0.45359237) / 30.48), 1, 1e-3, 'mass');
    expect(memory).toBe(true);
  });
  it('comes in both steels, and says which', () => {
    const titles = rows.map(({ title }) => title);
    for (const title of titles) expect(title).toMatch(/^(Carbon|Stainless) steel cable, /);
    expect(titles.filter((title) => title.startsWith('Stainless')).length).toBe(titles.length / 2);
    // The weakest of the small ones: 150 lbf where carbon steel has 185.
    const row = rows.find(({ title }) => title === 'Stainless steel cable, 1x7, 1/32 in')!;
    expect(row.values.breaking_load! / POUND_FORCE).toBeCloseTo(150, 9);
  });
  it('weighs what its wires do, for the strands of seven: within a fifth, as the table stands for the heaviest', () => {
    for (const { title, values } of rows.filter(({ title }) => / 1x7, /.test(title))) {
      const wires = (7 / 9) * CIRCLE * values.diameter! ** 2 * 7850;
      expect(values.linear_mass! / wires, title).toBeGreaterThan(1);
      expect(values.linear_mass! / wires, title).toBeLessThan(1.25);
    }
  });
});

/*
 * Trade ratings recalled, and AMA control line general rule 5.3.5.1; densities as in `wire_constants.json`; drag of strands the middle of 1.0 to
 * 1.2 (S. F. Hoerner, Fluid-Dynamic Drag, recalled), of braid from a source on tethers.
 */
describe('lines', () => {
  const { stranded_small_cable, uhmwpe_braid, density_kg_m3 } = jsonOf('wire_constants.json');
  const fibre = materials.rows.find(({ name }) => name === 'polyethylene_fibre')!.values.density!;
  it.each(lineKinds.rows.filter(({ name }) => !name.startsWith('solid_')).map((row) => [row.title, row] as const))(
    '%s',
    (title, { values }) => {
      const size = Number(/\(([\d.]+) in\)/.exec(title)![1]);
      const isBraid = title.startsWith('Polyethylene braid');
      const same = (row: { d_in: number }): boolean => row.d_in === size;
      const area = CIRCLE * (size * INCH) ** 2;
      const rating = isBraid
        ? uhmwpe_braid.rated_strength_over_nominal_circle_MPa_computed.find(same).rated_lbf
        : stranded_small_cable.trade_ratings_recalled.find(same).rating_lbf;
      near(values.diameter!, size * INCH, 1e-12, 'diameter');
      near(values.breaking_load! / POUND_FORCE, rating, 1e-9, 'rating');
      near(values.drag_coefficient!, isBraid ? 0.958 : 1.1, 1e-12, 'drag');
      const mass = isBraid ? 0.7 * fibre * area : (7 / 9) * density_kg_m3['302/304 stainless'] * area;
      near(values.linear_mass! / mass, 1, 2e-3, 'mass');
      near(lineLinearMass(LINE_KINDS[values.kind!]!, values.diameter!) / mass, 1, 1e-9, 'mass by kind');
    },
  );
});
