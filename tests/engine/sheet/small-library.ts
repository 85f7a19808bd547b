import type { LibraryRow, LibraryTable } from '../../../engine/library/index';
import { AREAL_MASS, DENSITY, FORCE, LENGTH, PRESSURE } from '../../../engine/units/index';

const row = (name: string, title: string, values: Readonly<Record<string, number>>, memory = false): LibraryRow => ({
  name,
  title,
  values,
  words: {},
  source: 'invented',
  memory,
});

/** Three small tables of invented rows: with a blank, with a recalled row, with an option. */
export const smallTables: readonly LibraryTable[] = [
  {
    name: 'materials',
    title: 'Materials',
    one: 'material',
    doc: 'Invented stuff.',
    columns: {
      density: { title: 'Density', symbol: 'ρ', dimension: DENSITY, unit: 'kg/m³', tradeUnit: 'lb/ft³' },
      modulus: { title: 'Young’s modulus', symbol: 'E', dimension: PRESSURE, unit: 'GPa', mayBeBlank: true },
    },
    rows: [
      row('soft_wood', 'Soft wood', { density: 100, modulus: 3e9 }),
      row('hard_wood', 'Hard wood', { density: 600, modulus: 1e10 }),
      row('odd_stuff', 'Odd stuff', { density: 50, modulus: Number.NaN }),
    ],
  },
  {
    name: 'finishes',
    title: 'Finishes',
    one: 'finish',
    doc: 'Invented coats.',
    columns: {
      areal_mass: { title: 'Areal mass', symbol: 'w', dimension: AREAL_MASS, unit: 'g/m²', tradeUnit: 'oz/yd²' },
    },
    rows: [row('varnish', 'Varnish, one coat', { areal_mass: 0.012 })],
  },
  {
    name: 'cords',
    title: 'Cords',
    one: 'cord',
    doc: 'Invented cords.',
    caution: 'Pull them first.',
    feeds: 'cord',
    columns: {
      weave: { title: 'Weave', option: ['laid', 'plaited'] },
      diameter: { title: 'Diameter', symbol: 'd', dimension: LENGTH, unit: 'mm', tradeUnit: 'in' },
      strength: { title: 'Strength', symbol: 'F', dimension: FORCE, unit: 'N', tradeUnit: 'lbf', mayBeBlank: true },
    },
    rows: [
      row('thin_cord', 'Thin cord', { weave: 0, diameter: 0.0003, strength: 120 }),
      row('thick_cord', 'Thick cord', { weave: 1, diameter: 0.0005, strength: Number.NaN }, true),
    ],
  },
];
