import type { LineProfile } from '../../physics/index';
import type { Columns, Field, Result } from '../block';
import type { flightResults } from '../flight/results';
import { AIRSPEED, ANGLE, degrees, METRES, PLAIN } from '../measures';

/** The wind of the day: fields of the air block, read by what flies in wind. Level flight is in calm air. */
export const windFields = {
  wind: {
    ...AIRSPEED,
    symbol: 'W',
    title: 'Wind',
    doc: 'Mean wind at the height it is measured at. Level flight leaves it out; laps in wind, launch and glide take it.',
    default: 5,
    range: [0, 20],
    basis: 'A breezy flying day.',
  },
  wind_measured_at: {
    ...METRES,
    symbol: 'z_w',
    title: 'Wind measured at',
    doc: 'Height above the ground.',
    default: 2,
    range: [0.5, 30],
    basis: 'A hand held up.',
    advanced: true,
  },
  wind_profile: {
    ...PLAIN,
    symbol: 'p_w',
    title: 'Profile of the wind',
    doc: 'Exponent with which the wind grows with height; 0 for the same wind everywhere.',
    default: 0,
    range: [0, 0.5],
    basis: 'The same wind everywhere. About 1/7 over open ground (common practice, no source).',
    advanced: true,
  },
  wind_from: {
    ...ANGLE,
    symbol: 'β_w',
    title: 'Wind from',
    doc: 'Compass bearing that the wind blows from, north 0°, east 90°.',
    default: degrees(270),
    range: [0, degrees(360)],
    basis: 'West; it only turns bearings.',
    advanced: true,
  },
  gust: {
    ...PLAIN,
    symbol: 'G',
    title: 'Gust factor',
    doc: 'Wind of a gust over the mean wind. A gust is taken to last the lap.',
    default: 1.3,
    range: [1, 3],
    basis: 'Common practice, no source.',
    advanced: true,
  },
} as const satisfies Readonly<Record<string, Field>>;

const passedOn = ({ dimension, unit, symbol, title, doc }: Field): Result => ({
  dimension,
  unit,
  symbol,
  title,
  doc,
  detail: true,
});

/** The same, as other blocks read them. */
export const windResults = {
  wind: { ...passedOn(windFields.wind), tradeUnit: 'mph' },
  wind_measured_at: { ...passedOn(windFields.wind_measured_at), tradeUnit: 'ft' },
  wind_profile: passedOn(windFields.wind_profile),
  wind_from: passedOn(windFields.wind_from),
  gust: passedOn(windFields.gust),
} as const satisfies Readonly<Record<string, Result>>;

export const WIND_NAMES = ['wind', 'wind_measured_at', 'wind_profile', 'wind_from', 'gust'] as const;

type Air = Columns<typeof windResults>;
type Flight = Pick<Columns<typeof flightResults>, 'height' | 'handle_height' | 'direction'>;

/** Profile of the wind between handle and model. */
export const profileOf = (m: Float64Array, air: Air, flight: Flight, i: number): LineProfile => ({
  handleHeight: m[flight.handle_height + i]!,
  height: m[flight.height + i]!,
  exponent: m[air.wind_profile + i]!,
});

/** Wind at the height of the model over the wind as measured. */
export const windGrowth = (m: Float64Array, air: Air, flight: Flight, i: number): number =>
  (Math.max(m[flight.height + i]!, 0.1) / m[air.wind_measured_at + i]!) ** m[air.wind_profile + i]!;

/** Compass bearing (rad, 0 to 2π) from the pilot of an azimuth, which grows in the direction of flight from straight downwind. */
export function bearingOf(m: Float64Array, air: Air, flight: Flight, i: number, azimuth: number): number {
  // Counter-clockwise flight turns against the compass.
  const sense = m[flight.direction + i]! === 0 ? -1 : 1;
  const turn = (m[air.wind_from + i]! + Math.PI + sense * azimuth) / (2 * Math.PI);
  return (turn - Math.floor(turn)) * 2 * Math.PI;
}

/** Azimuth (rad, 0 to 2π) of a compass bearing: the inverse of `bearingOf`. */
export function azimuthOf(m: Float64Array, air: Air, flight: Flight, i: number, bearing: number): number {
  const sense = m[flight.direction + i]! === 0 ? -1 : 1;
  const turn = (sense * (bearing - m[air.wind_from + i]! - Math.PI)) / (2 * Math.PI);
  return (turn - Math.floor(turn)) * 2 * Math.PI;
}
