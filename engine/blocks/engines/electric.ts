import { motorCurrent, motorRunning, motorTorque, throttleFor } from '../../physics/index';
import { CHARGE, CURRENT, RATE, RESISTANCE, SPEED_PER_VOLTAGE, TIME, VOLTAGE } from '../../units/index';
import { air } from '../air/index';
import { block, type Field } from '../block';
import { AIRSPEED_KNOTS } from '../curve';
import { PLAIN, SHARE } from '../measures';
import { propellerResults } from '../propeller/results';
import { engineCautions } from './cautions';
import { drawPlace, mountTemplates, propellerMount, writePlace } from './mount';
import { propelledReasons, propelledResults, writeDrive } from './propelled';
import { engineResults } from './results';
import { electricTheory } from './theory-propeller';

const RPM = (2 * Math.PI) / 60;
const MEASURED = 'By the constants of the motor. What the charger puts back is better.';
/** The true use of charge lies within these factors: guesses. */
const MEASURED_SPREAD = 1.05;
const COMPUTED_SPREAD = 1.25;

/** Electric motor by its three constants, with its pack. */
export const electric = block({
  kind: 'electric',
  role: 'engine',
  title: 'Electric motor',
  doc: 'Motor by its three constants on its pack, at full throttle or held at one rpm by its controller. Arm only when the model is held and everyone is behind the propeller; charge packs as their maker says, never unwatched.',
  line: ['station', 'propeller_diameter', 'pitch'],
  fields: {
    air: { link: 'air', results: air.results, doc: 'The air of the day.' },
    propeller: { link: 'propeller', results: propellerResults, doc: 'The propeller that it turns.' },
    speed_per_volt: {
      dimension: SPEED_PER_VOLTAGE,
      unit: 'rpm/V',
      symbol: 'K_v',
      title: 'Speed per volt',
      doc: 'Of the motor without load, as printed.',
      default: 1000 * RPM,
      range: [50 * RPM, 20000 * RPM],
    } as Field,
    resistance: {
      dimension: RESISTANCE,
      unit: 'mΩ',
      symbol: 'R',
      title: 'Motor resistance',
      doc: 'Of motor and controller together.',
      default: 0.06,
      range: [0.0005, 10],
    } as Field,
    idle_current: {
      dimension: CURRENT,
      unit: 'A',
      symbol: 'I_0',
      title: 'Idle current',
      doc: 'Of the motor turning without propeller.',
      default: 1,
      range: [0, 30],
    } as Field,
    voltage: {
      dimension: VOLTAGE,
      unit: 'V',
      symbol: 'U',
      title: 'Pack voltage',
      doc: 'Without load, in the middle of the flight: 3.8 V a lithium cell is common practice, no source.',
      default: 15.2,
      range: [1, 100],
    } as Field,
    pack_resistance: {
      dimension: RESISTANCE,
      unit: 'mΩ',
      symbol: 'R_p',
      title: 'Pack resistance',
      doc: 'Of the whole pack with its leads.',
      default: 0.03,
      range: [0, 5],
    } as Field,
    governed_speed: {
      dimension: RATE,
      unit: 'rpm',
      symbol: 'n_g',
      title: 'Rpm that is held',
      doc: 'Held by the controller as far as the pack allows.',
      default: Number.NaN,
      range: [500 * RPM, 60000 * RPM],
      basis: 'Nothing is held: full throttle.',
    } as Field,
    capacity: {
      dimension: CHARGE,
      unit: 'mAh',
      symbol: 'Q_b',
      title: 'Pack capacity',
      doc: 'As printed.',
      default: 2200 * 3.6,
      range: [10 * 3.6, 50000 * 3.6],
    } as Field,
    usable_share: {
      ...SHARE,
      symbol: 'k_b',
      title: 'Share that is used',
      doc: 'Of the printed capacity before landing.',
      default: 0.8,
      range: [0.1, 1],
      basis: 'Common practice, no source.',
      advanced: true,
    } as Field,
    charge_put_back: {
      dimension: CHARGE,
      unit: 'mAh',
      symbol: 'Q_d',
      title: 'Charge put back, measured',
      doc: 'What the charger put back after a flight. Takes the running time of that flight beside it.',
      default: Number.NaN,
      range: [3.6, 50000 * 3.6],
      basis: MEASURED,
      advanced: true,
    } as Field,
    charge_time: {
      dimension: TIME,
      unit: 's',
      symbol: 't_d',
      title: 'Running time of that flight',
      doc: 'From start to stop of the motor.',
      default: Number.NaN,
      range: [5, 7200],
      basis: MEASURED,
      advanced: true,
    } as Field,
    ...propellerMount,
  },
  results: {
    ...engineResults,
    ...propelledResults,
    static_current: {
      dimension: CURRENT,
      unit: 'A',
      symbol: 'I_b0',
      title: 'Pack current at rest',
      doc: 'With the model held on the ground, near the greatest that there is. Motor, controller, pack and connectors must stand it.',
    },
    throttle: {
      ...PLAIN,
      symbol: 'd_0',
      title: 'Throttle at rest',
      doc: 'Share of the voltage that the controller passes on; at 1 it holds no longer.',
      detail: true,
    },
  },
  reasons: {
    half_measured: 'Charge that was put back needs the running time of that flight beside it. Type both, or none.',
    ...propelledReasons,
  },
  theory: electricTheory,
  cautions: engineCautions,
  run(m, f, r, i, stride) {
    const motor = {
      speedPerVolt: m[f.speed_per_volt + i]!,
      resistance: m[f.resistance + i]!,
      idleCurrent: m[f.idle_current + i]!,
      voltage: m[f.voltage + i]!,
      packResistance: m[f.pack_resistance + i]!,
    };
    const [putBack, time] = [m[f.charge_put_back + i]!, m[f.charge_time + i]!];
    if (Number.isNaN(putBack) !== Number.isNaN(time)) return 'half_measured';
    const governed = m[f.governed_speed + i]!;
    const drive = {
      torque: (speed: number): number => motorTorque(motor, speed),
      ...motorRunning(motor),
    };
    const hold = Number.isNaN(governed) ? Number.POSITIVE_INFINITY : governed;
    const wrong = writeDrive(m, f.propeller, r, i, stride, m[f.air.density + i]!, drive, hold);
    if (wrong) return wrong;
    const measured = !Number.isNaN(putBack);
    for (let k = 0; k < AIRSPEED_KNOTS.length; k++) {
      const at = k * stride + i;
      const load = m[r.torque + at]!;
      const throttle = Math.max(0, Math.min(1, throttleFor(motor, m[r.shaft_speed + at]!, load)));
      if (k === 0) {
        m[r.throttle + i] = throttle;
        m[r.static_current + i] = throttle * motorCurrent(motor, load);
      }
      m[r.current + at] = measured ? putBack / time : Math.max(0, throttle * motorCurrent(motor, load));
      m[r.fuel_flow + at] = 0;
    }
    m[r.tank_volume + i] = 0;
    m[r.pack_charge + i] = m[f.capacity + i]! * m[f.usable_share + i]!;
    m[r.flow_spread + i] = measured ? MEASURED_SPREAD : COMPUTED_SPREAD;
    writePlace(m, f, r, i);
    return undefined;
  },
  templates: mountTemplates,
  draw: (m, f) => drawPlace(m, f, m[f.propeller.diameter]!),
});
