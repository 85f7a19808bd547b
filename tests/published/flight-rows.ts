import { readFileSync } from 'node:fs';
import { csvRows, jsonOf, type NotUsed } from './aero-rows';

/** Published rows on circular flight, lines and numerics, as copied into this folder, and those that no check uses. */
export const notUsedRows: readonly NotUsed[] = JSON.parse(
  readFileSync(new URL('flight.not-used.json', import.meta.url), 'utf8'),
);

const listed = (prefix: string, ids: readonly (string | number)[]): string[] => ids.map((id) => `${prefix} ${id}`);
interface Row {
  readonly id: string;
}
const ids = (rows: readonly Row[]): string[] => rows.map((row) => row.id);

/** Every row of every copied file, by a name of its own. */
const rowNames: Readonly<Record<string, () => string[]>> = {
  'circular_flight_examples.json': () => ids(jsonOf('circular_flight_examples.json').examples),
  'competition_courses.csv': () => csvRows('competition_courses.csv').map((row) => `${row.class}: ${row.item}`),
  'tether_drag.json': () => {
    const file = jsonOf('tether_drag.json');
    return [
      ...ids(file.results),
      'published_comparison_case',
      ...file.towed_in_circle_literature.map((row: { ref: string }) => row.ref.split(',')[0]),
      'field_estimate',
    ];
  },
  'cylinder_cd_wieselsberger.csv': () =>
    csvRows('cylinder_cd_wieselsberger.csv').flatMap((row) => [
      `${row.reynolds_number} measured`,
      ...(row.cd_fit_cheng_computed ? [`${row.reynolds_number} Cheng`] : []),
      ...(row.cd_fit_white_computed ? [`${row.reynolds_number} White`] : []),
    ]),
  'cylinder_drag_notes.json': () => {
    const file = jsonOf('cylinder_drag_notes.json');
    return [
      ...listed(
        'fit',
        file.curve_fits.map((row: { name: string }) => row.name),
      ),
      'vortex_shedding',
      ...file.stranded.map((row: { item: string }) => row.item),
      'yawed_cylinder',
      'axial_friction',
      'vibration_amplification',
    ];
  },
  'numerics_tests.json': () => {
    const file = jsonOf('numerics_tests.json');
    return [...ids(file.ode), ...ids(file.bvp), ...ids(file.catenary), ...ids(file.root_finding.cases)];
  },
  'wire_constants.json': () => {
    const file = jsonOf('wire_constants.json');
    return [
      ...listed(
        'strength',
        file.shigley_constants.map((row: { wire: string; A_MPa_mm_m: number }) => `${row.wire} ${row.A_MPa_mm_m}`),
      ),
      ...listed(
        'moduli',
        file.shigley_moduli.map((row: { wire: string; d_mm: string }) => `${row.wire} ${row.d_mm}`),
      ),
      'yield_ratio',
      'density music wire',
      'density 302/304 stainless',
      ...listed(
        'other strength law',
        file.other_strength_laws_A228.map((row: { A_MPa_mm_m: number }) => row.A_MPa_mm_m),
      ),
      ...listed(
        'trade rating',
        file.stranded_small_cable.trade_ratings_recalled.map((row: { d_in: number }) => row.d_in),
      ),
      'forum point',
      ...listed(
        'strand computed',
        file.stranded_small_cable.computed.map((row: { d_in: number }) => row.d_in),
      ),
      ...listed(
        'braid rating',
        file.uhmwpe_braid.rated_strength_over_nominal_circle_MPa_computed.map((row: { d_in: number }) => row.d_in),
      ),
      'braid knot efficiency',
    ];
  },
  'fluids_free_surface.json': () => [...ids(jsonOf('fluids_free_surface.json').examples), 'control_line_scale'],
  'fastener_areas.csv': () => csvRows('fastener_areas.csv').map((row) => row.thread!),
  'fastener_grades.csv': () => csvRows('fastener_grades.csv').map((row) => row.grade!),
  'strength_wire_bending.json': () => [
    'solid_round',
    'cantilever',
    ...ids(jsonOf('strength_wire_bending.json').examples),
  ],
  'wire_aircraft_cable.csv': () =>
    csvRows('wire_aircraft_cable.csv').map((row) => `${row.nominal_diameter_in} ${row.construction}`),
  'wire_astm_a228_tensile.csv': () => csvRows('wire_astm_a228_tensile.csv').map((row) => row.diameter_mm!),
};

export const copiedFlightFiles: readonly string[] = Object.keys(rowNames);
export const flightRowsOf = (file: string): string[] => rowNames[file]!();

/** Rows of a file that the not-used list leaves to the checks. */
export function usedFlightRows(file: string): string[] {
  const left = new Set(notUsedRows.filter((each) => each.file === file).map((each) => each.row));
  return flightRowsOf(file).filter((row) => !left.has(row));
}
