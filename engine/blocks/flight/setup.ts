import type { SetupRoom } from '../../physics/index';
import type { Columns } from '../block';
import { AIRSPEED_KNOTS } from '../curve';
import type { flightFields, flightLinks } from './fields';

/** How the model is flown: all but what only tells it against a rule. */
type Flown = Omit<Columns<typeof flightFields>, 'test_factor' | 'test_load'>;

/**
 * One sample of the linked blocks, into a record that is there already: a new one for every design of a sweep would cost more heap than all
 * the rest of it.
 */
export function readSetup(
  m: Float64Array,
  f: Columns<typeof flightLinks>,
  flown: Flown,
  i: number,
  stride: number,
  s: SetupRoom,
): void {
  const { air, parts, wing, tail, body, engine, leadouts, lines } = f;
  const dragFactor = m[flown.drag_factor + i]!;
  s.mass = m[parts.mass + i]!;
  s.gravity = m[flown.gravity + i]!;
  s.cgX = m[parts.x + i]!;
  s.cgY = m[parts.y + i]!;
  s.cgZ = m[parts.z + i]!;
  s.inertiaSpan = m[parts.inertia_yy + i]!;
  s.inertiaUp = m[parts.inertia_zz + i]!;
  s.density = m[air.density + i]!;
  s.kinematicViscosity = m[air.kinematic_viscosity + i]!;
  s.height = m[flown.height + i]! - m[flown.handle_height + i]!;
  s.handleReach = m[lines.handle_reach + i]!;
  s.guideRadius = m[lines.guide_radius + i]!;
  s.lineCount = m[lines.count + i]!;
  s.lineDiameter = m[lines.diameter + i]!;
  s.lineLinearMass = m[lines.linear_mass + i]!;
  s.lineDragCoefficient = m[lines.drag_coefficient + i]!;
  s.lineDragFactor = m[lines.drag_factor + i]!;
  s.guideX = m[leadouts.guide_x + i]!;
  s.guideY = m[leadouts.guide_y + i]!;
  s.guideZ = m[leadouts.guide_z + i]!;
  s.wingArea = m[wing.area + i]!;
  s.wingQuarterChord = m[wing.quarter_chord + i]!;
  s.meanChord = m[wing.mean_chord + i]!;
  s.wingSlope = m[wing.lift_slope + i]!;
  s.wingIncidence = m[wing.incidence + i]!;
  s.zeroLiftAngle = m[wing.zero_lift_angle + i]!;
  s.momentCoefficient = m[wing.moment_coefficient + i]!;
  s.profileDrag = dragFactor * m[wing.profile_drag + i]!;
  s.sectionSpeed = (m[wing.section_reynolds + i]! * m[air.kinematic_viscosity + i]!) / m[wing.mean_chord + i]!;
  s.dragPower = m[wing.drag_power + i]!;
  s.liftPower = m[wing.lift_power + i]!;
  s.dragSlope = m[wing.drag_slope + i]!;
  s.inducedFactor = m[wing.induced_factor + i]!;
  s.liftLimit = m[wing.lift_limit + i]!;
  s.liftStation = m[wing.lift_station + i]!;
  s.liftStationTurn = m[wing.lift_station_turn + i]!;
  s.dragStation = m[wing.drag_station + i]!;
  s.dragStationTurn = m[wing.drag_station_turn + i]!;
  s.tailArea = m[tail.area + i]!;
  s.tailQuarterChord = m[tail.quarter_chord + i]!;
  s.tailSlope = m[tail.lift_slope + i]!;
  s.downwash = m[tail.downwash + i]!;
  s.tailIncidence = m[tail.incidence + i]!;
  s.elevatorEffect = m[tail.elevator_effect + i]!;
  s.tailInducedFactor = m[tail.induced_factor + i]!;
  s.tailDragArea = dragFactor * m[body.drag_area_tail + i]!;
  s.finArea = m[tail.fin_area + i]!;
  s.finQuarterChord = m[tail.fin_quarter_chord + i]!;
  s.finZ = m[tail.fin_centre + i]!;
  s.finSlope = m[tail.fin_slope + i]!;
  s.rudderAngle = m[tail.rudder_angle + i]!;
  s.rudderEffect = m[tail.rudder_effect + i]!;
  s.sideArea = m[body.side_area + i]!;
  s.sideMoment = m[body.side_moment + i]!;
  s.sideSecondMoment = m[body.side_second_moment + i]!;
  s.sideSlope = m[body.side_slope + i]!;
  s.slenderCouple = m[body.slender_couple + i]!;
  s.crossFlowDrag = m[body.cross_flow_drag + i]!;
  s.dragArea = dragFactor * (m[body.drag_area + i]! - m[body.drag_area_tail + i]!);
  s.engineX = m[engine.station + i]!;
  s.engineY = m[engine.offset_y + i]!;
  s.engineZ = m[engine.height + i]!;
  s.sideThrust = m[engine.side_thrust + i]!;
  s.downThrust = m[engine.down_thrust + i]!;
  s.rotorInertia = m[engine.rotor_inertia + i]!;
  // Both options count from the usual one: either reversed turns the torque over, both together leave it.
  s.turning = m[flown.direction + i]! === m[flown.rotation + i]! ? 1 : -1;
  s.spinning = s.turning;
  s.curves = m;
  s.thrustAt = engine.thrust + i;
  s.torqueAt = engine.torque + i;
  s.shaftSpeedAt = engine.shaft_speed + i;
  s.stride = stride;
  s.knotStep = AIRSPEED_KNOTS[1]!;
  s.knotCount = AIRSPEED_KNOTS.length;
}
