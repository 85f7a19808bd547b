import type { FlightSetup } from '../../physics/index';
import type { Columns } from '../block';
import { AIRSPEED_KNOTS } from '../curve';
import type { flightFields, flightLinks } from './fields';

/** What a flight is computed from: all but what only tells it against a rule. */
type Inputs = Omit<Columns<typeof flightLinks & typeof flightFields>, 'test_factor' | 'test_load'>;

/** One sample of the linked blocks as one record. A literal: filling a record by names costs six times as much. */
export function readSetup(m: Float64Array, f: Inputs, i: number, stride: number): FlightSetup {
  const { air, parts, wing, tail, body, engine, leadouts, lines } = f;
  const dragFactor = m[f.drag_factor + i]!;
  return {
    mass: m[parts.mass + i]!,
    gravity: m[f.gravity + i]!,
    cgX: m[parts.x + i]!,
    cgY: m[parts.y + i]!,
    cgZ: m[parts.z + i]!,
    inertiaSpan: m[parts.inertia_yy + i]!,
    inertiaUp: m[parts.inertia_zz + i]!,
    density: m[air.density + i]!,
    kinematicViscosity: m[air.kinematic_viscosity + i]!,
    height: m[f.height + i]! - m[f.handle_height + i]!,
    handleReach: m[lines.handle_reach + i]!,
    guideRadius: m[lines.guide_radius + i]!,
    lineCount: m[lines.count + i]!,
    lineDiameter: m[lines.diameter + i]!,
    lineLinearMass: m[lines.linear_mass + i]!,
    lineDragCoefficient: m[lines.drag_coefficient + i]!,
    lineDragFactor: m[lines.drag_factor + i]!,
    guideX: m[leadouts.guide_x + i]!,
    guideY: m[leadouts.guide_y + i]!,
    guideZ: m[leadouts.guide_z + i]!,
    wingArea: m[wing.area + i]!,
    wingQuarterChord: m[wing.quarter_chord + i]!,
    meanChord: m[wing.mean_chord + i]!,
    wingSlope: m[wing.lift_slope + i]!,
    wingIncidence: m[wing.incidence + i]!,
    zeroLiftAngle: m[wing.zero_lift_angle + i]!,
    momentCoefficient: m[wing.moment_coefficient + i]!,
    profileDrag: dragFactor * m[wing.profile_drag + i]!,
    inducedFactor: m[wing.induced_factor + i]!,
    liftLimit: m[wing.lift_limit + i]!,
    liftStation: m[wing.lift_station + i]!,
    liftStationTurn: m[wing.lift_station_turn + i]!,
    dragStation: m[wing.drag_station + i]!,
    dragStationTurn: m[wing.drag_station_turn + i]!,
    tailArea: m[tail.area + i]!,
    tailQuarterChord: m[tail.quarter_chord + i]!,
    tailSlope: m[tail.lift_slope + i]!,
    downwash: m[tail.downwash + i]!,
    tailIncidence: m[tail.incidence + i]!,
    elevatorEffect: m[tail.elevator_effect + i]!,
    tailInducedFactor: m[tail.induced_factor + i]!,
    tailDragArea: dragFactor * m[body.drag_area_tail + i]!,
    finArea: m[tail.fin_area + i]!,
    finQuarterChord: m[tail.fin_quarter_chord + i]!,
    finSlope: m[tail.fin_slope + i]!,
    rudderAngle: m[tail.rudder_angle + i]!,
    rudderEffect: m[tail.rudder_effect + i]!,
    sideArea: m[body.side_area + i]!,
    sideMoment: m[body.side_moment + i]!,
    sideSecondMoment: m[body.side_second_moment + i]!,
    sideSlope: m[body.side_slope + i]!,
    slenderCouple: m[body.slender_couple + i]!,
    crossFlowDrag: m[body.cross_flow_drag + i]!,
    dragArea: dragFactor * (m[body.drag_area + i]! - m[body.drag_area_tail + i]!),
    engineX: m[engine.station + i]!,
    engineY: m[engine.offset_y + i]!,
    engineZ: m[engine.height + i]!,
    sideThrust: m[engine.side_thrust + i]!,
    downThrust: m[engine.down_thrust + i]!,
    rotorInertia: m[engine.rotor_inertia + i]!,
    // Both options count from the usual one: either reversed turns the torque over, both together leave it.
    turning: m[f.direction + i]! === m[f.rotation + i]! ? 1 : -1,
    curves: m,
    thrustAt: engine.thrust + i,
    torqueAt: engine.torque + i,
    shaftSpeedAt: engine.shaft_speed + i,
    stride,
    knotStep: AIRSPEED_KNOTS[1]!,
    knotCount: AIRSPEED_KNOTS.length,
  };
}
