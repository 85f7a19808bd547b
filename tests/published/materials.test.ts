import { describe, expect, it } from 'vitest';
import { materials as table } from '../../engine/library/tables/materials';
import { csvRows, usedIn } from './aero-rows';

const materials = table.rows.map(({ name, memory, values }) => ({
  name,
  memory,
  density: values.density!,
  modulus: values.modulus!,
}));
/** A row may be read but for one of its values; what was recalled earlier has been replaced by what was read. */
const RECALLED = /(?<!earlier )recalled/;
const named = (name: string) => materials.find((each) => each.name === name)!;
/** Within a hundredth: what rounding a density to a whole number and a modulus to three digits costs. */
const near = (value: number, printed: number): void => {
  expect(Math.abs(value / printed - 1), `${value} against ${printed}`).toBeLessThan(0.01);
};

/*
 * USDA Forest Products Laboratory, Wood Handbook, clear wood at 12 % moisture content: oven-dry mass over volume at 12 %, modulus in bending
 * in MPa. Density as bought = specific gravity × 1.12.
 */
describe('woods', () => {
  const names: Readonly<Record<string, string>> = {
    'basswood (Tilia americana)': 'basswood',
    'maple, sugar': 'maple',
    'yellow-poplar': 'poplar',
    'spruce, Engelmann': 'spruce_engelmann',
    'spruce, Sitka': 'spruce_sitka',
    'birch, paper': 'birch_paper',
    'birch, sweet': 'birch_sweet',
    'ash, white': 'ash',
  };
  it.each(usedIn('materials_wood.csv'))('%s', (species) => {
    const row = csvRows('materials_wood.csv').find((each) => each.species === species)!;
    const density = Number(row.specific_gravity_ovendry_mass_over_12pct_volume) * 1.12 * 1000;
    const modulus = Number(row.modulus_of_elasticity_bending_MPa) * 1e6;
    if (species.startsWith('balsa')) {
      // Every balsa of the library has the modulus of this row in proportion to its density.
      for (const balsa of materials.filter((each) => each.name.startsWith('balsa'))) {
        expect(Math.abs((balsa.modulus / balsa.density) * (density / modulus) - 1)).toBeLessThan(0.02);
      }
      return;
    }
    near(named(names[species]!).density, density);
    near(named(names[species]!).modulus, modulus);
    expect(named(names[species]!).memory).toBe(row.memory === 'true');
  });
});

/* M. Chudnoff, Tropical Timbers of the World, as quoted by a timber merchant; grades of the model trade: common practice, no source. */
describe('balsa', () => {
  const grades: Readonly<Record<string, string>> = {
    'air-dry density, commercial balsa': 'balsa_trade',
    'contest-grade model balsa': 'balsa_light',
    'medium model balsa': 'balsa_medium',
    'hard model balsa': 'balsa_hard',
  };
  it.each(usedIn('materials_balsa_range.csv'))('%s', (item) => {
    const row = csvRows('materials_balsa_range.csv').find((each) => each.item === item)!;
    const [low, high] = [Number(row.low), Number(row.high)];
    if (item.startsWith('modulus')) {
      expect(named('balsa_trade').modulus).toBeGreaterThan(low * 1e6);
      expect(named('balsa_trade').modulus).toBeLessThan(high * 1e6);
      return;
    }
    const { density } = named(grades[item]!);
    expect(density).toBeGreaterThanOrEqual(low);
    expect(density).toBeLessThanOrEqual(high);
  });
});

/* Public tables and handbooks, each named in its row: density in kg/m³, modulus in MPa. */
describe('metals, plastics, composites, fuels', () => {
  const names: Readonly<Record<string, string>> = {
    'aluminium alloy 6061': 'aluminium',
    'aluminium alloy 2024': 'aluminium_2024',
    'aluminium alloy 7075-T6': 'aluminium_7075',
    'brass C36000': 'brass',
    'carbon steel': 'steel',
    'stainless steel 304': 'stainless',
    'music wire ASTM A228': 'music_wire',
    lead: 'lead',
    'nylon 6/6': 'nylon',
    'epoxy resin (cured)': 'epoxy',
    'carbon/epoxy laminate, 60 % fibre': 'carbon_laminate',
    'E-glass/epoxy laminate, 55-60 % fibre': 'glass_laminate',
    'S-glass/epoxy, 45 % unidirectional': 's_glass_laminate',
    'methanol, 20 degC': 'methanol',
    'nitromethane, 20-25 degC': 'nitromethane',
    'castor oil, 20 degC': 'castor_oil',
    'UHMWPE fibre, SK75/SK78 grade': 'polyethylene_fibre',
  };
  it.each(usedIn('materials_general.csv'))('%s', (material) => {
    const row = csvRows('materials_general.csv').find((each) => each.material === material)!;
    const stuff = named(names[material]!);
    near(stuff.density, Number(row.density_kg_m3));
    // Bulk music wire is listed softer than its thin sizes, which the library takes from a table by diameter.
    const tolerance = material.startsWith('music wire') ? 0.04 : 0.01;
    if (row.youngs_modulus_MPa !== '') {
      expect(Math.abs(stuff.modulus / (Number(row.youngs_modulus_MPa) * 1e6) - 1)).toBeLessThan(tolerance);
    }
    expect(stuff.memory).toBe(row.memory === 'true' || RECALLED.test(row.source!));
  });
  it('glow fuel is its three parts by volume', () => {
    const mixed =
      0.7 * named('methanol').density + 0.1 * named('nitromethane').density + 0.2 * named('castor_oil').density;
    near(named('glow_fuel').density, mixed);
  });
});
