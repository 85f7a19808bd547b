import { lineStretch, newSolution, pullAtHandle, solveFlight, stretchAngle } from '../../physics/index';
import { block, type Shape } from '../block';
import { typedOr } from '../measures';
import { flightCautions } from './cautions';
import { drawLines } from './draw';
import { writeEngineUse } from './engine';
import { flightFields, flightLinks } from './fields';
import { AS_FLOWN, flightResults } from './results';
import { readSetup } from './setup';
import { flightTheory } from './theory';

const s = newSolution();
const METHODS = { newton: 1, march: 2, scan: 3 } as const;
/** Closest that the quarter chords of wing and tail may stand, m: nearer, neither can balance the other. */
const LEAST_ARM = 0.02;

/** Steady level flight on the lines. */
export const flight = block({
  kind: 'flight',
  title: 'Level flight',
  doc: 'Speed, lap time, line pull and trim in steady level flight in calm air, from the balance of all forces and moments. Estimates for comparing set-ups: the pull test, the rule book and the field decide.',
  fields: { ...flightLinks, ...flightFields },
  results: flightResults,
  reasons: {
    too_little_thrust:
      'Too little thrust to fly level: at {shortfall_speed}, the best speed, {shortfall} are missing. More thrust or less drag of model and lines would do it.',
    lines_slack:
      'The lines go slack: they are tight only above {slack_speed}, and there is not enough thrust for that speed. A lower flight, more thrust, a little more tip weight or the guide further aft would keep them tight.',
    never_tight:
      'The lines are not tight at any speed that the propeller can reach. A lower flight, more thrust, more tip weight or the guide further aft would help.',
    stalled:
      'The wing would have to lift with a coefficient of {lift_coefficient} at {speed}; it stalls at {wing.lift_limit}. Less weight, a lower flight, more wing or more speed would do.',
    out_of_reach:
      'A flying height of {height} with the handle at {handle_height} is more than 80° up on lines of this radius ({lines.guide_radius} to the guide). Fly lower or use longer lines.',
    no_tail_arm:
      'The quarter chords of wing ({wing.quarter_chord}) and tail ({tail.quarter_chord}) stand too close together to balance each other. Move the tail.',
  },
  theory: flightTheory,
  cautions: flightCautions,
  run(m, f, r, i, stride) {
    for (const name of AS_FLOWN) m[r[name] + i] = m[f[name] + i]!;
    const setup = readSetup(m, f, i, stride);
    if (Math.abs(setup.tailQuarterChord - setup.wingQuarterChord) < LEAST_ARM) return 'no_tail_arm';
    solveFlight(setup, s);
    m[r.shortfall + i] = s.shortfall;
    m[r.shortfall_speed + i] = s.shortfallSpeed;
    m[r.slack_speed + i] = s.slackSpeed;
    m[r.speed + i] = s.speed;
    m[r.lift_coefficient + i] = s.liftCoefficient;
    switch (s.status) {
      case 'settled':
        break;
      case 'too little thrust':
        return 'too_little_thrust';
      case 'lines slack':
        return Number.isNaN(s.slackSpeed) ? 'never_tight' : 'lines_slack';
      case 'beyond lift limit':
        return 'stalled';
      case 'out of reach':
        return 'out_of_reach';
    }
    const weight = setup.mass * setup.gravity;
    const rate = s.speed / s.radius;
    const lap = (2 * Math.PI * Math.cos(s.elevation)) / rate;
    const hanging = m[f.lines.mass + i]! * setup.gravity;
    const perLength = setup.lineCount * setup.lineLinearMass;
    const { handleReach, guideRadius } = setup;
    const atHandle = pullAtHandle(s.pull, perLength, rate, handleReach, guideRadius, hanging, s.elevation);
    const perLine = atHandle / setup.lineCount;
    const stretch = lineStretch(s.pull / setup.lineCount, guideRadius - handleReach, m[f.lines.stiffness + i]!);
    const whole = stretch * setup.lineCount;
    const q = 0.5 * setup.density * s.speed * s.speed;
    const dragBody = q * m[f.drag_factor + i]! * m[f.body.drag_area_body + i]!;
    m[r.lap_time + i] = lap;
    m[r.laps_per_minute + i] = (2 * Math.PI) / lap;
    m[r.pull + i] = s.pull;
    m[r.pull_per_weight + i] = s.pull / weight;
    m[r.pull_at_handle + i] = atHandle;
    m[r.pull_per_line + i] = perLine;
    const testLoad = typedOr(m[f.test_load + i]!, m[f.test_factor + i]! * weight);
    m[r.test_load + i] = testLoad;
    m[r.test_margin + i] = testLoad / atHandle;
    m[r.breaking_margin + i] = m[f.lines.breaking_load + i]! / perLine;
    m[r.nose_out + i] = s.noseOut;
    m[r.outboard_low + i] = s.outboardLow;
    m[r.pitch + i] = s.pitch;
    m[r.sideslip + i] = s.sideslip;
    m[r.line_trail + i] = s.lineTrail;
    m[r.line_sag + i] = s.lineSag;
    m[r.guide_trail + i] = s.guideTrail;
    m[r.elevation + i] = s.elevation;
    m[r.radius + i] = s.radius;
    m[r.line_drag + i] = s.lineDrag;
    m[r.line_weight_at_guide + i] = s.linePress;
    m[r.line_stretch + i] = stretch;
    m[r.stretch_angle + i] = stretchAngle(whole - stretch, m[f.lines.handle_spacing + i]!);
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
    m[r.drag_lines + i] = (s.lineDrag * guideRadius) / s.radius;
    m[r.thrust + i] = s.thrust;
    m[r.torque + i] = s.torque;
    m[r.shaft_power + i] = s.torque * s.shaftSpeed;
    m[r.shaft_speed + i] = s.shaftSpeed;
    m[r.pitch_speed_share + i] = (2 * Math.PI * s.speed) / (s.shaftSpeed * m[f.engine.pitch + i]!);
    writeEngineUse(m, f, r, i, setup, s, lap);
    m[r.status + i] = 0;
    m[r.residual + i] = s.residual;
    m[r.iterations + i] = s.iterations;
    m[r.method + i] = METHODS[s.method];
    return undefined;
  },
  draw(m, f, r): Shape[] {
    const [trail, noseOut] = [m[r.line_trail]!, m[r.nose_out]!];
    const gamma = Math.atan2(m[r.guide_trail]!, m[f.lines.guide_radius]!);
    return drawLines({
      x: m[f.leadouts.guide_x]!,
      y: m[f.leadouts.guide_y]!,
      spacing: m[f.leadouts.spacing]!,
      length: m[f.lines.flying_length]!,
      aft: noseOut + trail - gamma,
      handleSpacing: m[f.lines.handle_spacing]!,
    });
  },
});
