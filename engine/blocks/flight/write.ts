import {
  type FlightSetup,
  type FlightSolution,
  lapRate,
  lapTimeAt,
  lineStretch,
  marginOver,
  pullAtHandle,
  shareOfPitchSpeed,
  stretchAngle,
} from '../../physics/index';
import type { Columns } from '../block';
import { typedOr } from '../measures';
import type { flightFields, flightLinks } from './fields';
import type { flightResults } from './results';

type Fields = Columns<typeof flightLinks & typeof flightFields>;
type Results = Columns<typeof flightResults>;

/** The circle, and what pulls along it. */
export function writePull(
  m: Float64Array,
  f: Fields,
  r: Results,
  i: number,
  setup: FlightSetup,
  s: FlightSolution,
): void {
  const weight = setup.mass * setup.gravity;
  const rate = s.speed / s.radius;
  const lap = lapTimeAt(s.speed, s.radius, s.elevation);
  const hanging = m[f.lines.mass + i]! * setup.gravity;
  const perLength = setup.lineCount * setup.lineLinearMass;
  const { handleReach, guideRadius } = setup;
  const atHandle = pullAtHandle(s.pull, perLength, rate, handleReach, guideRadius, hanging, s.elevation);
  const perLine = atHandle / setup.lineCount;
  const stretch = lineStretch(s.pull / setup.lineCount, guideRadius - handleReach, m[f.lines.stiffness + i]!);
  const whole = stretch * setup.lineCount;
  m[r.lap_time + i] = lap;
  m[r.laps_per_minute + i] = lapRate(lap);
  m[r.pull + i] = s.pull;
  m[r.pull_per_weight + i] = marginOver(s.pull, weight);
  m[r.pull_at_handle + i] = atHandle;
  m[r.pull_per_line + i] = perLine;
  const testLoad = typedOr(m[f.test_load + i]!, m[f.test_factor + i]! * weight);
  m[r.test_load + i] = testLoad;
  m[r.test_margin + i] = marginOver(testLoad, atHandle);
  m[r.breaking_margin + i] = marginOver(m[f.lines.breaking_load + i]!, perLine);
  m[r.line_drag + i] = s.lineDrag;
  m[r.line_weight_at_guide + i] = s.linePress;
  m[r.line_stretch + i] = stretch;
  m[r.stretch_angle + i] = stretchAngle(whole - stretch, m[f.lines.handle_spacing + i]!);
}

/** How the model stands in the air, and the forces on it. */
export function writeForces(
  m: Float64Array,
  f: Fields,
  r: Results,
  i: number,
  setup: FlightSetup,
  s: FlightSolution,
): void {
  const q = 0.5 * setup.density * s.speed * s.speed;
  const dragBody = q * m[f.drag_factor + i]! * m[f.body.drag_area_body + i]!;
  m[r.nose_out + i] = s.noseOut;
  m[r.outboard_low + i] = s.outboardLow;
  m[r.pitch + i] = s.pitch;
  m[r.sideslip + i] = s.sideslip;
  m[r.line_trail + i] = s.lineTrail;
  m[r.line_sag + i] = s.lineSag;
  m[r.guide_trail + i] = s.guideTrail;
  m[r.elevation + i] = s.elevation;
  m[r.radius + i] = s.radius;
  m[r.lift + i] = s.lift;
  m[r.tail_lift + i] = s.tailLift;
  m[r.elevator + i] = s.elevator;
  m[r.side_force + i] = s.sideForce;
  m[r.drag + i] = s.drag;
  m[r.drag_wing + i] = s.dragWing;
  m[r.drag_induced + i] = s.dragInduced;
  m[r.drag_body + i] = dragBody;
  m[r.drag_tail + i] = s.dragTail;
  m[r.drag_items + i] = s.dragItems - dragBody;
  m[r.drag_trim + i] = s.dragTrim;
  m[r.drag_side + i] = s.dragSide;
  m[r.drag_lines + i] = (s.lineDrag * setup.guideRadius) / s.radius;
  m[r.thrust + i] = s.thrust;
  m[r.torque + i] = s.torque;
  m[r.shaft_power + i] = s.torque * s.shaftSpeed;
  m[r.shaft_speed + i] = s.shaftSpeed;
  m[r.pitch_speed_share + i] = shareOfPitchSpeed(s.speed, s.shaftSpeed, m[f.engine.pitch + i]!);
}
