import { bestRelease, newLaunch, newSetup, RELEASES, runFrom, stallSpeed } from '../../physics/index';
import { TIME } from '../../units/index';
import { azimuthOf, bearingOf, profileOf } from '../air/wind';
import { block, type Columns, type Field, type Result } from '../block';
import { setupInWind, windLinks } from '../flight/in-wind';
import { ringColumns } from '../lap/ring';
import { AIRSPEED, ANGLE, degrees, METRES, NEWTONS, PLAIN } from '../measures';
import { solverResults } from '../solver';
import { launchCautions } from './cautions';
import { launchTheory } from './theory';

const setup = newSetup();
const launched = newLaunch();
const pictured = newLaunch();

const launchFields = {
  release: {
    ...ANGLE,
    symbol: 'β_0',
    title: 'Released at',
    doc: 'Compass bearing from the pilot to the model at release.',
    default: degrees(90),
    range: [0, degrees(360)],
    basis: 'East: straight downwind of a west wind.',
  } as Field,
  flying_factor: {
    ...PLAIN,
    symbol: 'k_f',
    title: 'Flying speed over stall',
    doc: 'Airspeed at which it lifts off over the stall speed.',
    default: 1.2,
    range: [1, 2.5],
    basis: 'Common practice, no source.',
  } as Field,
  rolling: {
    ...PLAIN,
    symbol: 'μ',
    title: 'Rolling drag',
    doc: 'Force that keeps the wheels rolling over the load on them.',
    default: 0.05,
    range: [0, 2],
    basis: 'Short dry grass, full-size tyres (course notes on aircraft design, W. H. Mason); small wheels are worse.',
  } as Field,
  toe_out: {
    ...ANGLE,
    symbol: 'ψ_0',
    title: 'Nose out on the ground',
    doc: 'How far the wheels hold the nose outward from the circle.',
    default: 0,
    range: [degrees(-10), degrees(20)],
    basis: 'Wheels that point along the circle.',
  } as Field,
} as const;

const launchResults = {
  flying_speed: { ...AIRSPEED, symbol: 'V_f', title: 'Flying speed', doc: 'Airspeed at which it lifts off.' },
  length: { ...METRES, symbol: 's_0', title: 'Run to flying speed', doc: 'Along the circle.' },
  laps: { ...PLAIN, symbol: 'n_0', title: 'Laps on the ground', doc: 'Of the run.' },
  time: { dimension: TIME, unit: 's', symbol: 't_0', title: 'Time of the run', doc: 'From release to lifting off.' },
  least_pull: {
    ...NEWTONS,
    symbol: 'T_0',
    title: 'Least pull in the run',
    doc: 'Of all lines at the model. Negative: the model is pressed inward by so much and the lines are slack.',
  },
  least_bearing: {
    ...ANGLE,
    symbol: 'β_0m',
    title: 'Bearing of the least pull',
    doc: 'Compass bearing from the pilot.',
  },
  best_release: {
    ...ANGLE,
    symbol: 'β_0b',
    title: 'Best release',
    doc: `Compass bearing, among ${RELEASES} around the circle, from which the lines pull most at their least.`,
  },
  best_least_pull: {
    ...NEWTONS,
    symbol: 'T_0b',
    title: 'Least pull from the best release',
    doc: 'Of all lines at the model.',
  },
  ...solverResults({
    of: 'Of the run from release to flying speed',
    steps: 'Steps of a hundredth of a second.',
    residual: { ...AIRSPEED, doc: 'Airspeed at the last step over the flying speed.' },
  }),
} as const satisfies Readonly<Record<string, Result>>;

type Fields = Columns<typeof windLinks & typeof launchFields>;

/** The run at its own height: wind as at the hand, where both are near the ground. */
function read(m: Float64Array, f: Fields, i: number, stride: number) {
  setupInWind(m, f, i, stride, setup);
  const profile = profileOf(m, f.air, f.flight, i);
  const low = { ...profile, height: Math.max(profile.handleHeight, 0.1) };
  const share = (low.height / m[f.air.wind_measured_at + i]!) ** profile.exponent;
  const wind = { speed: m[f.air.wind + i]! * share, profile: { ...low, exponent: 0 } };
  const how = {
    rolling: m[f.rolling + i]!,
    flyingSpeed: stallSpeed(setup) * m[f.flying_factor + i]!,
    noseOut: m[f.toe_out + i]!,
  };
  return { setup, wind, how };
}

/** The run from release to lifting off. */
export const launch = block({
  kind: 'launch',
  slow: true,
  title: 'Launch',
  doc: 'The run on the wheels from release to flying speed: how long it is, how the lines pull around it, and where to release against the wind. Lines go slack just after release more often than anywhere else.',
  line: ['time', 'least_pull'],
  lineTitled: true,
  fields: { ...windLinks, ...launchFields },
  results: launchResults,
  reasons: {
    does_not_lift:
      'The model does not come to its flying speed of {flying_speed}: the rolling drag of {rolling} of the load and the air hold it back. More thrust, smoother ground or a hand launch would do.',
    too_slow: 'Level flight is no faster than the flying speed of {flying_speed}: the model cannot leave the ground.',
  },
  theory: launchTheory,
  cautions: launchCautions,
  run(m, f, r, i, stride) {
    const { setup, wind, how } = read(m, f, i, stride);
    m[r.flying_speed + i] = how.flyingSpeed;
    if (m[f.flight.speed + i]! <= how.flyingSpeed) return 'too_slow';
    runFrom(setup, wind, how, azimuthOf(m, f.air, f.flight, i, m[f.release + i]!), launched);
    if (launched.status !== 'settled') return 'does_not_lift';
    m[r.length + i] = launched.length;
    m[r.laps + i] = launched.turned / (2 * Math.PI);
    m[r.time + i] = launched.time;
    m[r.status + i] = 0;
    m[r.iterations + i] = launched.iterations;
    m[r.residual + i] = launched.residual;
    m[r.least_pull + i] = launched.leastPull;
    m[r.least_bearing + i] = bearingOf(m, f.air, f.flight, i, launched.leastAzimuth);
    const best = bestRelease(setup, wind, how, RELEASES);
    m[r.best_release + i] = bearingOf(m, f.air, f.flight, i, best.azimuth);
    m[r.best_least_pull + i] = best.leastPull;
    return undefined;
  },
  traces: {
    run: {
      title: 'Along the run',
      doc: 'Pull and speed from release to lifting off, against azimuth from straight downwind of the pilot or the distance run.',
      columns: {
        azimuth: ringColumns.azimuth,
        pull: ringColumns.pull,
        speed: ringColumns.speed,
        distance: { ...METRES, symbol: 's', title: 'Distance run', doc: 'Along the circle, from release.' },
      },
      run(m, f) {
        const { setup, wind, how } = read(m, f, 0, 1);
        if (Number.isNaN(how.flyingSpeed)) return undefined;
        runFrom(setup, wind, how, azimuthOf(m, f.air, f.flight, 0, m[f.release]!), pictured);
        if (pictured.status !== 'settled') return undefined;
        const { azimuth, pull, speed, length, turned } = pictured;
        const distance = azimuth.map((at) => ((at - azimuth[0]!) * length) / turned);
        return { azimuth, pull, speed, distance };
      },
    },
  },
});
