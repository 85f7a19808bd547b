import { dryPart, geopotentialHeight, moistAirDensity, standardPressure, viscosityOfAir } from '../../physics/index';
import { block } from '../block';
import {
  AIR_DENSITY,
  AIR_KINEMATIC_VISCOSITY,
  AIR_PRESSURE,
  AIR_VISCOSITY,
  METRES,
  SHARE,
  typedOr,
  WARMTH,
} from '../measures';
import { airTheory } from './theory';
import { WIND_NAMES, windFields, windResults } from './wind';

/** The air of the day. */
export const air = block({
  kind: 'air',
  title: 'Air',
  doc: 'Density and viscosity of the air on the day, from temperature, pressure or elevation, and humidity; and its wind.',
  line: ['density', 'wind'],
  fields: {
    temperature: {
      ...WARMTH,
      symbol: 't',
      title: 'Temperature',
      doc: 'Of the air at flying height.',
      default: 288.15,
      range: [253.15, 318.15],
    },
    elevation: {
      ...METRES,
      symbol: 'z',
      title: 'Elevation of the field',
      doc: 'Above sea level. Gives the pressure where none is typed.',
      default: 0,
      range: [-400, 4500],
    },
    pressure: {
      ...AIR_PRESSURE,
      symbol: 'p',
      title: 'Pressure at the field',
      doc: 'Absolute pressure at the field, as a barometer on the spot shows it: not reduced to sea level.',
      default: Number.NaN,
      range: [55000, 110000],
      basis: 'Standard pressure at the elevation of the field, ISO 2533.',
    },
    humidity: {
      ...SHARE,
      symbol: 'h',
      title: 'Relative humidity',
      doc: 'Moist air is a little lighter than dry air.',
      default: 0.5,
      range: [0, 1],
    },
    density: {
      ...AIR_DENSITY,
      symbol: 'ρ',
      title: 'Density',
      doc: 'Of the air. Typed, it stands in place of what temperature, pressure and humidity give.',
      default: Number.NaN,
      range: [0.6, 1.6],
      basis: 'CIPM-2007 from temperature, pressure and humidity.',
      advanced: true,
    },
    ...windFields,
  },
  results: {
    density: {
      ...AIR_DENSITY,
      symbol: 'ρ',
      title: 'Density',
      doc: 'Of the air. Lift, drag and the power of an engine go with it.',
      source: 'CIPM-2007',
    },
    viscosity: {
      ...AIR_VISCOSITY,
      symbol: 'μ',
      title: 'Viscosity',
      doc: 'Dynamic viscosity of the air.',
      source: 'US Standard Atmosphere 1976, eq. 51',
      detail: true,
    },
    kinematic_viscosity: {
      ...AIR_KINEMATIC_VISCOSITY,
      symbol: 'ν',
      title: 'Kinematic viscosity',
      doc: 'Viscosity over density: what Reynolds numbers are made with.',
      detail: true,
    },
    pressure: {
      ...AIR_PRESSURE,
      symbol: 'p',
      title: 'Pressure at the field',
      doc: 'As typed, or standard pressure at the elevation.',
      source: 'ISO 2533:1975',
    },
    dry_part: {
      ...SHARE,
      symbol: 'δ',
      title: 'Dry part',
      doc: 'Of the mass of the air. Moisture takes the place of air that an engine could burn with.',
      detail: true,
    },
    ...windResults,
  },
  reasons: {},
  theory: airTheory,
  run(m, f, r, i) {
    const temperature = m[f.temperature + i]!;
    const pressure = typedOr(m[f.pressure + i]!, standardPressure(geopotentialHeight(m[f.elevation + i]!)));
    const density = typedOr(m[f.density + i]!, moistAirDensity(pressure, temperature, m[f.humidity + i]!));
    const viscosity = viscosityOfAir(temperature);
    m[r.density + i] = density;
    m[r.viscosity + i] = viscosity;
    m[r.kinematic_viscosity + i] = viscosity / density;
    m[r.pressure + i] = pressure;
    m[r.dry_part + i] = dryPart(density, temperature, m[f.humidity + i]!);
    for (const name of WIND_NAMES) m[r[name] + i] = m[f[name] + i]!;
    return undefined;
  },
});
