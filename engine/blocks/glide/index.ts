import {
  flyGlide,
  type Glide,
  LANDING_OVER_STALL,
  newFlightRoom,
  newGlide,
  newSetup,
  newSolution,
  newWindRoom,
  rollOut,
  shutOffs,
  solveFlight,
  stallSpeed,
  stoppedPropellerDragArea,
  withEngineOff,
} from '../../physics/index';
import { TIME } from '../../units/index';
import { azimuthOf, bearingOf, profileOf, windGrowth } from '../air/wind';
import { block, type Columns, type Field, type Result } from '../block';
import { setupInWind, windLinks } from '../flight/in-wind';
import { ringColumns } from '../lap/ring';
import { AIRSPEED, ANGLE, degrees, METRES, NEWTONS, PLAIN, SMALL_AREA, typedOr } from '../measures';
import { solverResults } from '../solver';
import { glideCautions } from './cautions';
import { glideTheory } from './theory';

const TURN = 2 * Math.PI;
const still = newSolution();
const setup = newSetup();
const room = newFlightRoom();
const windRoom = newWindRoom();
const glided = newGlide();
const pictured = newGlide();

const glideFields = {
  landing_factor: {
    ...PLAIN,
    symbol: 'k_l',
    title: 'Landing speed over stall',
    doc: 'Airspeed at touchdown over the stall speed.',
    default: LANDING_OVER_STALL,
    range: [1, 2.5],
    basis: 'Common practice, no source.',
  } as Field,
  propeller_drag_area: {
    ...SMALL_AREA,
    symbol: 'A_p',
    title: 'Drag area of the stopped propeller',
    doc: 'Dynamic pressure times this is its drag.',
    default: Number.NaN,
    range: [0, 0.05],
    basis: 'Blades a tenth of the diameter wide, square to the air: a guess without a source.',
    advanced: true,
  } as Field,
  pit: {
    ...ANGLE,
    symbol: 'β_p',
    title: 'Bearing of the pit',
    doc: 'Compass bearing from the pilot to where the model should stop.',
    default: degrees(180),
    range: [0, degrees(360)],
    basis: 'South, until you type yours.',
  } as Field,
  rolling: {
    ...PLAIN,
    symbol: 'μ',
    title: 'Rolling drag',
    doc: 'Force that keeps the wheels rolling over the load on them, for the run after touchdown.',
    default: 0.05,
    range: [0.005, 2],
    basis: 'Short dry grass, full-size tyres (course notes on aircraft design, W. H. Mason); small wheels are worse.',
  } as Field,
} as const;

const glideResults = {
  stall_speed: {
    ...AIRSPEED,
    symbol: 'V_s',
    title: 'Stall speed',
    doc: 'Airspeed of level flight at the greatest lift coefficient.',
  },
  landing_speed: { ...AIRSPEED, symbol: 'V_l', title: 'Landing speed', doc: 'Airspeed at touchdown.' },
  laps: {
    ...PLAIN,
    symbol: 'n_g',
    title: 'Glide laps',
    doc: 'From shutting off to touchdown with the height held, shut off so as to stop at the pit.',
  },
  time: {
    dimension: TIME,
    unit: 's',
    symbol: 't_g',
    title: 'Time of the glide',
    doc: 'From shutting off to touchdown.',
  },
  least_pull: { ...NEWTONS, symbol: 'T_g', title: 'Least pull in the glide', doc: 'Of all lines at the model.' },
  least_bearing: {
    ...ANGLE,
    symbol: 'β_g',
    title: 'Bearing of the least pull',
    doc: 'Compass bearing from the pilot.',
  },
  roll_out: {
    ...METRES,
    symbol: 's_r',
    title: 'Run after touchdown',
    doc: 'On its wheels, by rolling drag and the drag of the air.',
  },
  shut_off_bearing: {
    ...ANGLE,
    symbol: 'β_o',
    title: 'Shut off at',
    doc: 'Compass bearing from the pilot at which to shut off so that the model stops at the pit.',
  },
  shut_off_before: {
    ...PLAIN,
    symbol: 'n_o',
    title: 'Laps before the pit',
    doc: 'How many laps before its stop the engine is shut off.',
  },
  shut_off_ways: {
    ...PLAIN,
    symbol: 'k_o',
    title: 'Places to shut off',
    doc: 'From so many places around the circle the model stops at the pit; shown is the one that shuts off latest. More than one in wind, where the glide hangs on where it begins.',
    detail: true,
  },
  shut_off_earlier: {
    ...ANGLE,
    symbol: 'β_o2',
    title: 'Or shut off earlier at',
    doc: 'Compass bearing of the place that shuts off next earlier; none where there is one place only.',
    detail: true,
  },
  ...solverResults({
    of: 'Of the glide that ends at the pit',
    steps: 'Glides flown to find the places of shutting off.',
    residual: { ...ANGLE, doc: 'By how much the glide shown misses the pit.' },
  }),
  reason_azimuth: {
    ...ANGLE,
    symbol: 'θ_r',
    title: 'Where it gives way',
    doc: 'From straight downwind of the pilot, in the direction of flight; only where there is no glide.',
    detail: true,
  },
} as const satisfies Readonly<Record<string, Result>>;

type Fields = Columns<typeof windLinks & typeof glideFields>;

function fly(m: Float64Array, f: Fields, i: number, stride: number, from: number, out: Glide): number {
  setupInWind(m, f, i, stride, setup);
  solveFlight(setup, room, still);
  const area = typedOr(m[f.propeller_drag_area + i]!, stoppedPropellerDragArea(m[f.engine.propeller_diameter + i]!));
  const wind = {
    speed: m[f.air.wind + i]! * windGrowth(m, f.air, f.flight, i),
    profile: profileOf(m, f.air, f.flight, i),
  };
  const landing = stallSpeed(setup) * m[f.landing_factor + i]!;
  flyGlide(withEngineOff(setup, area), still, wind, from, still.speed, landing, windRoom, out);
  return landing;
}

/** Run after touchdown at the ground speed, m; the air's drag on model and lines as in level flight at that speed. */
function rolled(m: Float64Array, f: Fields, i: number, speed: number): number {
  const { flight } = f;
  const air = (m[flight.drag + i]! + m[flight.drag_lines + i]!) / m[flight.speed + i]! ** 2;
  const mass = m[f.parts.mass + i]!;
  return rollOut(speed, mass, air, m[f.rolling + i]! * mass * m[flight.gravity + i]!);
}

const wrapped = (angle: number): number => (angle / TURN - Math.floor(angle / TURN)) * TURN;
/** The glide after the engine stops. */
export const glide = block({
  kind: 'glide',
  slow: true,
  title: 'Engine-off glide',
  doc: 'How far the model flies after the engine is shut off with its height held, whether its lines stay tight in the wind, and where to shut off so that it stops at the pit.',
  line: ['laps', 'least_pull'],
  lineTitled: true,
  fields: { ...windLinks, ...glideFields },
  results: glideResults,
  reasons: {
    slack:
      'The lines go slack in the glide, {reason_azimuth} past straight downwind. Land sooner after shutting off: a lower height, a higher landing speed or less wind would keep them tight.',
    no_balance:
      'The model does not balance in the glide, {reason_azimuth} past straight downwind: it is too slow for the wind of {air.wind}.',
    too_long: 'The glide does not come to its end within 20 laps: the drag of the model is too small to be true.',
    already_slow:
      'Level flight is no faster than the landing speed of {landing_speed}: there is nothing to glide away.',
  },
  theory: glideTheory,
  cautions: glideCautions,
  run(m, f, r, i, stride) {
    const goal = azimuthOf(m, f.air, f.flight, i, m[f.pit + i]!);
    setupInWind(m, f, i, stride, setup);
    const stall = stallSpeed(setup);
    const landing = stall * m[f.landing_factor + i]!;
    m[r.landing_speed + i] = landing;
    if (m[f.flight.speed + i]! <= landing) return 'already_slow';
    let failed = glided.status;
    let failedAt = Number.NaN;
    const wholeFrom = (from: number): number => {
      fly(m, f, i, stride, from, glided);
      if (glided.status === 'settled') return glided.turned + rolled(m, f, i, glided.landingSpeed) / still.radius;
      failed = glided.status;
      failedAt = wrapped(from + glided.turned);
      return Number.NaN;
    };
    const { ways, iterations } = shutOffs(wholeFrom, goal);
    const [latest, other] = ways;
    m[r.reason_azimuth + i] = failedAt;
    if (!latest) {
      if (failed === 'slack') return 'slack';
      if (failed === 'too long') return 'too_long';
      return 'no_balance';
    }
    const whole = wholeFrom(latest.azimuth);
    if (glided.status !== 'settled') return 'no_balance';
    const from = latest.azimuth;
    m[r.reason_azimuth + i] = Number.NaN;
    m[r.status + i] = 0;
    m[r.iterations + i] = iterations;
    m[r.residual + i] = Math.abs(whole - latest.whole);
    m[r.stall_speed + i] = stall;
    m[r.laps + i] = glided.turned / TURN;
    m[r.time + i] = glided.time;
    m[r.least_pull + i] = glided.leastPull;
    m[r.least_bearing + i] = bearingOf(m, f.air, f.flight, i, glided.leastAzimuth);
    m[r.roll_out + i] = rolled(m, f, i, glided.landingSpeed);
    m[r.shut_off_bearing + i] = bearingOf(m, f.air, f.flight, i, from);
    m[r.shut_off_before + i] = whole / TURN;
    m[r.shut_off_ways + i] = ways.length;
    m[r.shut_off_earlier + i] = other ? bearingOf(m, f.air, f.flight, i, other.azimuth) : Number.NaN;
    return undefined;
  },
  traces: {
    way: {
      title: 'Along the glide',
      doc: 'Pull and speed from shutting off to touchdown, against azimuth from straight downwind of the pilot or the laps glided.',
      columns: {
        azimuth: ringColumns.azimuth,
        pull: ringColumns.pull,
        speed: ringColumns.speed,
        laps: { ...PLAIN, symbol: 'n', title: 'Laps glided', doc: 'Since shutting off.' },
      },
      run(m, f, r) {
        const from = azimuthOf(m, f.air, f.flight, 0, m[r.shut_off_bearing]!);
        if (Number.isNaN(from)) return undefined;
        fly(m, f, 0, 1, from, pictured);
        const { azimuth, pull, speed } = pictured;
        return { azimuth, pull, speed, laps: azimuth.map((at) => (at - azimuth[0]!) / TURN) };
      },
    },
  },
});
