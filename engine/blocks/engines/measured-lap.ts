import { lapPower, nearPower, STANDARD_GRAVITY, shaftSpeedOfLap, thrustAtPower } from '../../physics/index';
import { air } from '../air/index';
import { block } from '../block';
import { bodyResults } from '../body/results';
import { AIRSPEED_KNOTS } from '../curve';
import { typedOr } from '../measures';
import { wingResults } from '../wing/results';
import { engineCautions } from './cautions';
import { fuelFields, fuelReasons, writeFuel } from './fuel-use';
import { knownSetup, lapResults, powerUse } from './measured-lap-fields';
import { drawMount, engineMount, writeMount } from './mount';
import { powerFactor } from './power-factor';
import { engineResults } from './results';
import { measuredLapTheory } from './theory';

/** Engine or motor known by a timed lap of the model on a set-up that is on record. */
export const measuredLap = block({
  kind: 'measured_lap',
  role: 'engine',
  title: 'Engine by measured lap',
  doc: 'A timed lap on a known set-up tells the power that the propeller gives; that power is held while the design is changed. The usual choice for a model that has flown.',
  line: ['station', 'propeller_diameter', 'pitch'],
  fields: {
    air: { link: 'air', results: air.results, doc: 'The air of today, in which the propeller works.' },
    wing: { link: 'wing', results: wingResults, doc: 'The wing, for the drag of the timed lap where none is typed.' },
    body: {
      link: 'body',
      results: bodyResults,
      doc: 'Fuselage and exposed items, for the drag of the timed lap where none is typed.',
    },
    ...knownSetup,
    ...powerUse,
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
    const radius = m[f.known_radius + i]! + m[f.known_arm + i]!;
    const height = m[f.known_height + i]!;
    if (Math.abs(height) > 0.98 * radius) return 'too_high';
    const area = m[f.wing.area + i]!;
    // The wing's own drag at the airspeed of the timed lap, and what its camber makes of the weight.
    const speed = (2 * Math.PI * Math.sqrt(radius * radius - height * height)) / m[f.lap_time + i]!;
    const sectionSpeed =
      (m[f.wing.section_reynolds + i]! * m[f.air.kinematic_viscosity + i]!) / m[f.wing.mean_chord + i]!;
    const profile = m[f.wing.profile_drag + i]! * nearPower(speed, sectionSpeed, m[f.wing.drag_power + i]!);
    const weightArea = (2 * m[f.known_mass + i]! * STANDARD_GRAVITY) / (m[f.known_density + i]! * speed * speed);
    const wingDrag = area * profile + m[f.wing.drag_slope + i]! * weightArea;
    const dragArea = typedOr(m[f.known_drag_area + i]!, wingDrag + m[f.body.drag_area + i]!);
    const inducedArea = typedOr(m[f.known_induced_area + i]!, area / m[f.wing.induced_factor + i]!);
    const diameter = m[f.propeller_diameter + i]!;
    const pitch = m[f.pitch + i]!;
    const lap = lapPower({
      lapTime: m[f.lap_time + i]!,
      mass: m[f.known_mass + i]!,
      gravity: STANDARD_GRAVITY,
      radius,
      height,
      lines: {
        count: m[f.known_count + i]!,
        diameter: m[f.known_diameter + i]!,
        handleReach: m[f.known_handle_reach + i]!,
        guideRadius: m[f.known_radius + i]!,
        dragCoefficient: m[f.known_line_drag + i]!,
        dragFactor: 1,
        kinematicViscosity: m[f.air.kinematic_viscosity + i]!,
        density: m[f.known_density + i]!,
      },
      lineLinearMass: m[f.known_linear_mass + i]!,
      dragArea,
      wingArea: inducedArea,
      inducedFactor: 1,
      propellerDiameter: typedOr(m[f.known_propeller_diameter + i]!, diameter),
    });
    const shaftSpeed = typedOr(m[f.shaft_speed + i]!, shaftSpeedOfLap(lap.speed, pitch));
    const idealPower = m[f.power_factor + i]! * lap.idealPower;
    const shaftPower = idealPower / m[f.blade_efficiency + i]!;
    const density = m[f.air.density + i]!;
    for (let k = 0; k < AIRSPEED_KNOTS.length; k++) {
      const at = k * stride + i;
      m[r.thrust + at] = thrustAtPower(idealPower, AIRSPEED_KNOTS[k]!, density, diameter);
      m[r.torque + at] = shaftPower / shaftSpeed;
      m[r.power + at] = shaftPower;
      m[r.shaft_speed + at] = shaftSpeed;
    }
    writeMount(m, f, r, i);
    m[r.lap_speed + i] = lap.speed;
    m[r.lap_thrust + i] = lap.thrust;
    m[r.useful_power + i] = lap.usefulPower;
    m[r.drag_area_then + i] = dragArea;
    m[r.induced_area_then + i] = inducedArea;
    return writeFuel(m, f, r, i, stride);
  },
  draw: drawMount,
});
