import {
  ballastAt,
  cgOnScales,
  explainingMass,
  type FoundAt,
  fingertipCg,
  foundTogether,
  hangingCg,
  type Support,
  tipScaleCg,
} from '../../physics/index';
import { block } from '../block';
import { leadoutResults } from '../leadouts/index';
import { typedOr } from '../measures';
import { partsResults, partsRole } from '../parts/results';
import { wingResults } from '../wing/results';
import { foundCgCautions } from './cautions';
import { foundCgFields } from './fields';
import { foundCgResults } from './results';
import { foundCgTheory } from './theory';

const NOWHERE: FoundAt = { at: Number.NaN, error: Number.NaN };

/** Supports of which the place is known; none where all stand in one place, since nothing is told by that. */
function apart(readings: readonly number[], places: readonly number[]): readonly Support[] {
  const read = readings
    .map((reading, k) => ({ reading, place: places[k]! }))
    .filter((support) => !Number.isNaN(support.reading) && !Number.isNaN(support.place));
  return read.some(({ place }) => place !== read[0]!.place) ? read : [];
}

/** Where the CG of the finished model is, by what can be done with it on a bench, beside where the table has it. */
export const foundCg = block({
  kind: 'found_cg',
  title: 'Find the CG',
  doc: 'Where the CG of the model is: balanced on fingertips, on two or three scales, hung by the leadouts, with a scale under one tip; as many of them as you like. Beside it where the table of parts has it, and what would explain the difference.',
  line: ['x', 'difference_x'],
  lineTitled: true,
  fields: {
    parts: { link: partsRole, results: partsResults, doc: 'The list of parts: mass and CG to compare with.' },
    wing: { link: 'wing', results: wingResults, doc: 'The outboard tip.' },
    leadouts: { link: 'leadouts', results: leadoutResults, doc: 'The guide, at which the model hangs.' },
    body: { link: 'body', optional: true, doc: 'The tail end, unless typed.' },
    ...foundCgFields,
  },
  results: foundCgResults,
  reasons: {
    hung: 'The CG lies at or beyond the guide {table_y} across: hung by the leadouts, the model would not hang below them.',
    weightless: 'The scales read nothing at all. Type what they read, or leave them blank.',
  },
  theory: foundCgTheory,
  cautions: foundCgCautions,
  run(m, f, r, i) {
    const at = (column: number): number => m[column + i]!;
    const { parts, wing, leadouts } = f;
    const fuel = at(f.fuel);
    const [masses, stations, across] = [
      [parts.mass_empty, parts.mass_half, parts.mass_full, parts.mass],
      [parts.x_empty, parts.x_half, parts.x_full, parts.x],
      [parts.y_empty, parts.y_half, parts.y_full, parts.y],
    ];
    const table = { mass: at(masses[fuel]!), at: at(stations[fuel]!) };
    const tableY = at(across[fuel]!);
    m[r.table_mass + i] = table.mass;
    m[r.table_x + i] = table.at;
    m[r.table_y + i] = tableY;

    const readings = [at(f.scale_1), at(f.scale_2), at(f.scale_3)];
    const [readingError, placeError] = [at(f.reading_error), at(f.place_error)];
    const alongSupports = apart(readings, [at(f.scale_1_x), at(f.scale_2_x), at(f.scale_3_x)]);
    const acrossSupports = apart(readings, [at(f.scale_1_y), at(f.scale_2_y), at(f.scale_3_y)]);
    const onScales = alongSupports.reduce((sum, { reading }) => sum + reading, 0);
    if (alongSupports.length > 0 && !(onScales > 0)) return 'weightless';
    const mass = typedOr(at(f.whole), alongSupports.length > 0 ? onScales : Number.NaN);
    if (mass <= 0) return 'weightless';
    const known = typedOr(mass, table.mass);

    const scalesY = acrossSupports.length > 0 ? cgOnScales(acrossSupports, readingError, placeError) : NOWHERE;
    const tip = { reading: at(f.tip_scale), place: typedOr(at(f.tip_place), at(wing.outboard_span)) };
    const tipY = Number.isNaN(tip.reading)
      ? NOWHERE
      : tipScaleCg(known, at(f.tip_edge), tip, { reading: readingError, place: placeError });
    const y = foundTogether([scalesY, tipY]);
    m[r.scales_y + i] = scalesY.at;
    m[r.tip_y + i] = tipY.at;
    m[r.y + i] = y.at;
    m[r.y_error + i] = y.error;
    m[r.difference_y + i] = y.at - tableY;

    const guide = { x: at(leadouts.guide_x), y: at(leadouts.guide_y) };
    const hangsAt = typedOr(y.at, tableY);
    const droop = at(f.droop);
    if (!Number.isNaN(droop) && hangsAt <= guide.y) return 'hung';
    const finger = Number.isNaN(at(f.finger))
      ? NOWHERE
      : fingertipCg(at(f.finger_edge), at(f.finger), at(f.finger_error));
    const scales = alongSupports.length > 0 ? cgOnScales(alongSupports, readingError, placeError) : NOWHERE;
    const hanging = Number.isNaN(droop)
      ? NOWHERE
      : hangingCg(guide, hangsAt, droop, { angle: at(f.droop_error), place: placeError });
    const x = foundTogether([finger, scales, hanging]);
    m[r.finger_x + i] = finger.at;
    m[r.scales_x + i] = scales.at;
    m[r.hanging_x + i] = hanging.at;
    m[r.x + i] = x.at;
    m[r.x_error + i] = x.error;
    m[r.difference_x + i] = x.at - table.at;
    m[r.unsure_x + i] = Math.hypot(x.error, at(parts.x_sd));
    m[r.mass + i] = mass;
    m[r.difference_mass + i] = mass - table.mass;

    if (Number.isNaN(mass)) {
      const station = at(f.station);
      m[r.lacking_mass + i] = Number.isNaN(x.at) ? Number.NaN : ballastAt(table.mass, table.at, x.at, station).value;
      m[r.lacking_x + i] = Number.isNaN(x.at) ? Number.NaN : station;
      return undefined;
    }
    const lacking = explainingMass(table, { mass, at: x.at });
    // What a scale can't tell is no mass to be looked for anywhere.
    const told = Math.abs(lacking.mass) > 2 * readingError;
    m[r.lacking_mass + i] = lacking.mass;
    m[r.lacking_x + i] = told ? lacking.at : Number.NaN;
    return undefined;
  },
});
