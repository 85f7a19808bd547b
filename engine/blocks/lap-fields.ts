import type { Field } from './block';
import { flightLinks } from './flight-fields';
import { flightResults } from './flight-results';
import { AIRSPEED, ANGLE, degrees, METRES, NEWTONS, PLAIN } from './measures';

export const lapLinks = {
  ...flightLinks,
  flight: {
    link: 'flight',
    results: flightResults,
    doc: 'Level flight in calm air: height, direction, and where the lap starts from.',
  },
} as const;

export const lapFields = {
  wind: {
    ...AIRSPEED,
    symbol: 'W',
    title: 'Wind',
    doc: 'Mean wind at the height it is measured at.',
    default: 5,
    range: [0, 20],
    basis: 'A breezy flying day.',
  } as Field,
  measured_at: {
    ...METRES,
    symbol: 'z_w',
    title: 'Wind measured at',
    doc: 'Height above the ground.',
    default: 2,
    range: [0.5, 30],
    basis: 'A hand held up.',
  } as Field,
  profile: {
    ...PLAIN,
    symbol: 'p',
    title: 'Profile of the wind',
    doc: 'Exponent with which the wind grows with height; 0 for the same wind everywhere.',
    default: 0,
    range: [0, 0.5],
    basis: 'The same wind everywhere. About 1/7 over open ground (common practice, no source).',
    advanced: true,
  } as Field,
  gust: {
    ...PLAIN,
    symbol: 'G',
    title: 'Gust factor',
    doc: 'Wind of a gust over the mean wind. A gust is taken to last the lap.',
    default: 1.3,
    range: [1, 3],
    basis: 'Common practice, no source.',
  } as Field,
  from: {
    ...ANGLE,
    symbol: 'β_w',
    title: 'Wind from',
    doc: 'Compass bearing that the wind blows from, north 0°, east 90°.',
    default: degrees(270),
    range: [0, degrees(360)],
    basis: 'West, only for the bearings of least and greatest pull.',
  } as Field,
  floor: {
    ...NEWTONS,
    symbol: 'T_f',
    title: 'Least pull wanted',
    doc: 'Below it the pilot no longer feels the model on the lines.',
    default: Number.NaN,
    range: [0.1, 200],
    basis: 'The weight of the model, 1 g.',
  } as Field,
} as const;
