import { runsTooFast, twoStrokeRunning, twoStrokeTorque } from '../../physics/index';
import { POWER, RATE } from '../../units/index';
import { air } from '../air/index';
import { block, type Field } from '../block';
import { TORQUE } from '../measures';
import { propellerResults } from '../propeller/results';
import { densityExponent, densityOf, powerInAir } from './breathing';
import { engineCautions } from './cautions';
import { fuelFields, fuelReasons } from './fuel-use';
import { drawPlace, mountTemplates, propellerMount } from './mount';
import { powerFactor } from './power-factor';
import { propelledReasons, propelledResults, writeDrive, writeFuelled } from './propelled';
import { engineResults } from './results';
import { twoStrokeTheory } from './theory-propeller';

const RPM = (2 * Math.PI) / 60;

const shaftSpeed = (symbol: string, title: string, doc: string, rpm: number): Field => ({
  dimension: RATE,
  unit: 'rpm',
  symbol,
  title,
  doc,
  default: rpm * RPM,
  range: [1000 * RPM, 60000 * RPM],
});

/** Two-stroke engine known by its peaks of torque and power. */
export const twoStroke = block({
  kind: 'two_stroke',
  role: 'engine',
  title: 'Engine by its data',
  doc: 'Torque from the peaks of torque and power that a test or a data sheet gives, in proportion to the density of the air; the rpm at every airspeed follows from the propeller. Printed peaks are often those of the best fuel and no silencer.',
  line: ['station', 'propeller_diameter', 'pitch'],
  fields: {
    air: { link: 'air', results: air.results, doc: 'The air of the day: power goes with its density.' },
    propeller: { link: 'propeller', results: propellerResults, doc: 'The propeller that it turns.' },
    peak_torque: {
      ...TORQUE,
      symbol: 'Q_m',
      title: 'Peak torque',
      doc: 'Greatest torque with the silencer and fuel that you use.',
      default: 0.25,
      range: [0.001, 20],
    } as Field,
    torque_speed: shaftSpeed('n_Q', 'Rpm of peak torque', 'Where the torque has its peak.', 9500),
    peak_power: {
      dimension: POWER,
      unit: 'W',
      tradeUnit: 'hp',
      symbol: 'W_m',
      title: 'Peak power',
      doc: 'Greatest shaft power with the silencer and fuel that you use.',
      default: 300,
      range: [1, 20000],
    } as Field,
    power_speed: shaftSpeed('n_W', 'Rpm of peak power', 'Where the power has its peak.', 13500),
    rated_density: densityOf('ρ_m', 'data', 'When the peaks were measured.'),
    ...densityExponent,
    ...powerFactor,
    ...fuelFields,
    ...propellerMount,
  },
  results: { ...engineResults, ...propelledResults },
  reasons: {
    peaks_apart:
      'Peak power must come at more rpm than peak torque: it is at {power_speed}, and peak torque at {torque_speed}. Look at both again.',
    peaks_disagree:
      'The two peaks do not go together: {peak_power} at {power_speed} is more torque than the peak of {peak_torque}. Look at all four again.',
    ...propelledReasons,
    too_small:
      'The propeller ({propeller.diameter} × {propeller.pitch}) is too small for the engine: at rest it would run at {static_shaft_speed}, far beyond its peak of power at {power_speed}. A larger diameter or a coarser pitch would do.',
    ...fuelReasons,
  },
  theory: twoStrokeTheory,
  cautions: engineCautions,
  run(m, f, r, i, stride) {
    const torqueSpeed = m[f.torque_speed + i]!;
    const powerSpeed = m[f.power_speed + i]!;
    const peakTorque = m[f.peak_torque + i]!;
    const peakPower = m[f.peak_power + i]!;
    if (powerSpeed <= torqueSpeed) return 'peaks_apart';
    if (peakPower > peakTorque * powerSpeed) return 'peaks_disagree';
    const density = m[f.air.density + i]!;
    const share = m[f.power_factor + i]! * powerInAir(m, f, i, m[f.rated_density + i]!);
    const peaks = { peakTorque, torqueSpeed, peakPower, powerSpeed };
    const rated = twoStrokeTorque(peaks);
    const drive = {
      torque: (speed: number): number => share * rated(speed),
      ...twoStrokeRunning(peaks),
    };
    const wrong = writeDrive(m, f.propeller, r, i, stride, density, drive);
    if (wrong) return wrong;
    if (runsTooFast(m[r.static_shaft_speed + i]!, powerSpeed)) return 'too_small';
    return writeFuelled(m, f, r, i, stride);
  },
  templates: mountTemplates,
  draw: (m, f) => drawPlace(m, f, m[f.propeller.diameter]!),
});
