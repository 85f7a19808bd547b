import { lapPower, shaftShare, shaftSpeedOfLap, stillThrust, thrustOfLap } from '../../physics/index';
import { block } from '../block';
import { AIRSPEED_KNOTS } from '../curve';
import { typedOr } from '../measures';
import { densityExponent, powerInAir } from './breathing';
import { engineCautions } from './cautions';
import { fuelFields, fuelReasons, writeFuel } from './fuel-use';
import { knownSetup, lapResults, powerUse } from './measured-lap-fields';
import { drawMount, engineMount, mountTemplates, writeMount } from './mount';
import { powerFactor } from './power-factor';
import { engineResults } from './results';
import { measuredLapTheory } from './theory';
import { airThen, timedLap, timedLinks } from './timed-lap';

/** Engine or motor known by a timed lap of the model on a set-up that is on record. */
export const measuredLap = block({
  kind: 'measured_lap',
  role: 'engine',
  title: 'Engine by the timed lap',
  doc: 'A timed lap on a known set-up tells the power that the propeller gives; that power is held while the design is changed. The usual choice for a model that has flown.',
  line: ['station', 'propeller_diameter', 'pitch'],
  fields: {
    ...timedLinks,
    ...knownSetup,
    ...powerUse,
    ...densityExponent,
    power_factor: {
      ...powerFactor.power_factor,
      doc: 'What the power of the timed lap is multiplied by. A fit to other flown laps can find it.',
    },
    ...engineMount,
    ...fuelFields,
  },
  results: { ...engineResults, ...lapResults },
  reasons: {
    ...fuelReasons,
    too_high:
      'The timed lap was {known_height} above the handle: that is out of reach of {known_radius}. Type the height of the model above the handle.',
  },
  theory: measuredLapTheory,
  cautions: engineCautions,
  run(m, f, r, i, stride) {
    const timed = timedLap(m, f, i);
    if (!timed) return 'too_high';
    const lap = lapPower(timed);
    const diameter = m[f.propeller_diameter + i]!;
    const density = m[f.air.density + i]!;
    const { known, knownDryPart } = airThen(m, f, i);
    const share = powerInAir(m, f, i, known, knownDryPart);
    const turned = typedOr(m[f.shaft_speed + i]!, shaftSpeedOfLap(lap.speed, m[f.pitch + i]!));
    const shaftSpeed = turned * shaftShare(share, density, known);
    const idealPower = m[f.power_factor + i]! * share * lap.idealPower;
    const shaftPower = idealPower / m[f.blade_efficiency + i]!;
    const torque = shaftPower / shaftSpeed;
    const slow = { lapSpeed: lap.speed, still: stillThrust(torque, m[f.pitch + i]!) };
    for (let k = 0; k < AIRSPEED_KNOTS.length; k++) {
      const at = k * stride + i;
      m[r.thrust + at] = thrustOfLap(idealPower, AIRSPEED_KNOTS[k]!, density, diameter, slow);
      m[r.torque + at] = torque;
      m[r.power + at] = shaftPower;
      m[r.shaft_speed + at] = shaftSpeed;
    }
    writeMount(m, f, r, i);
    m[r.lap_speed + i] = lap.speed;
    m[r.lap_thrust + i] = lap.thrust;
    m[r.useful_power + i] = lap.usefulPower;
    m[r.drag_area_then + i] = timed.dragArea;
    m[r.induced_area_then + i] = timed.wingArea;
    return writeFuel(m, f, r, i, stride);
  },
  templates: mountTemplates,
  draw: drawMount,
});
