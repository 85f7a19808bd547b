import { readFileSync } from 'node:fs';
import { readCsv } from '../../engine/library/csv';

/** Published rows on air, mass and aerodynamics, as copied into this folder, and those that no check uses. */
const here = new URL('.', import.meta.url);
const textOf = (file: string): string => readFileSync(new URL(file, here), 'utf8');

export const csvRows = (file: string): Readonly<Record<string, string>>[] =>
  readCsv(textOf(file)).map((row) => row.values);
// biome-ignore lint/suspicious/noExplicitAny: each published file has a form of its own.
export const jsonOf = (file: string): any => JSON.parse(textOf(file));

export interface NotUsed {
  readonly file: string;
  readonly row: string;
  readonly reason: string;
}
export const notUsed: readonly NotUsed[] = JSON.parse(textOf('aero.not-used.json'));
export const notUsedIn = (file: string): string[] =>
  notUsed.filter((each) => each.file === file).map((each) => each.row);

/** Half a unit of the last printed digit. A number from JSON has lost its closing zeros, which only makes this wider. */
export function halfUnit(printed: string | number): number {
  const [mantissa, exponent] = String(printed).toLowerCase().split('e') as [string, string | undefined];
  const decimals = mantissa.includes('.') ? mantissa.length - mantissa.indexOf('.') - 1 : 0;
  // A little more, for the rounding of the difference itself.
  return 0.5000001 * 10 ** (Number(exponent ?? 0) - decimals);
}

const listed = (prefix: string, ids: readonly (string | number)[]): string[] => ids.map((id) => `${prefix} ${id}`);

/** Every row of every copied file, by a name of its own. */
const rowNames: Readonly<Record<string, () => string[]>> = {
  'atmosphere_isa.csv': () =>
    csvRows('atmosphere_isa.csv').flatMap((row) =>
      Object.keys(row)
        .filter((column) => /_(K|Pa|kg_m3|m_s|s)$/.test(column))
        .map((column) => `${row.geopotential_altitude_m} ${column}`),
    ),
  'atmosphere_constants.json': () => {
    const file = jsonOf('atmosphere_constants.json');
    return [
      ...file.isa_constants.map((row: { name: string }) => row.name),
      ...listed(
        'sutherland',
        file.sutherland.map((_: unknown, k: number) => k),
      ),
      'cipm_2007',
      ...listed(
        'moist air',
        file.moist_air_check_values.map((_: unknown, k: number) => k),
      ),
    ];
  },
  'aero_wing_examples.json': () => {
    const file = jsonOf('aero_wing_examples.json');
    return [
      ...listed(
        'formula',
        file.formulas.map((row: { name: string }) => row.name),
      ),
      ...file.examples.map((row: { id: string }) => row.id),
      ...listed(
        'lifting line AR',
        file.rectangular_wing_lifting_line.rows.map((row: { AR: number }) => row.AR),
      ),
      ...listed(
        'lifting surface AR',
        file.rectangular_wing_lifting_surface.rows.map((row: { AR: number }) => row.AR),
      ),
      ...listed(
        'flat plate',
        file.flat_plate_measured.rows.map((row: number[]) => row.join(' ')),
      ),
    ];
  },
  'aero_section_data.csv': () => csvRows('aero_section_data.csv').map((row) => row.section!),
  'aero_section_low_re.csv': () => csvRows('aero_section_low_re.csv').map((row) => `${row.section} ${row.reynolds}`),
  'aero_stability_examples.json': () =>
    jsonOf('aero_stability_examples.json').examples.map((row: { id: string }) => row.id),
  'aero_guidelines.json': () => {
    const file = jsonOf('aero_guidelines.json');
    return [
      ...listed('component drag', Object.keys(file.component_drag.values)),
      ...listed('second source', Object.keys(file.component_drag.second_source.values)),
      'second source installation_factor',
      'sphere_confirmed_point',
      ...listed('horizontal tail volume', Object.keys(file.tail_volume.horizontal)),
      ...listed('vertical tail volume', Object.keys(file.tail_volume.vertical)),
      ...listed(
        'landing gear',
        Object.keys(file.landing_gear).filter((key) => !['source', 'memory'].includes(key)),
      ),
      ...listed(
        'flat plate',
        Object.keys(file.flat_plate).filter((key) => key !== 'memory'),
      ),
      ...listed('rolling resistance', Object.keys(file.rolling_resistance.values)),
    ];
  },
  'materials_wood.csv': () => csvRows('materials_wood.csv').map((row) => row.species!),
  'materials_balsa_range.csv': () => csvRows('materials_balsa_range.csv').map((row) => row.item!),
  'materials_general.csv': () => csvRows('materials_general.csv').map((row) => row.material!),
};

export const copiedFiles: readonly string[] = Object.keys(rowNames);
export const rowsOf = (file: string): string[] => rowNames[file]!();

/** Rows of a file that the not-used list leaves to the checks. */
export const usedIn = (file: string): string[] => {
  const left = new Set(notUsedIn(file));
  return rowsOf(file).filter((row) => !left.has(row));
};
