import { newFlightRoom, newSetup, newSolution, solveFlight } from '../../physics/index';
import { block, type Shape } from '../block';
import { flightCautions } from './cautions';
import { drawLines } from './draw';
import { writeEngineUse } from './engine';
import { flightFields, flightLinks } from './fields';
import { fillingFields, fillingResults, writeLaps } from './filling';
import { AS_FLOWN, flightResults } from './results';
import { readSetup } from './setup';
import { flightTheory } from './theory';
import { writeForces, writePull } from './write';

const s = newSolution();
const setup = newSetup();
const room = newFlightRoom();
const METHODS = { newton: 1, march: 2, scan: 3 } as const;
/** Closest that the quarter chords of wing and tail may stand, m: nearer, neither can balance the other. */
const LEAST_ARM = 0.02;

/** Steady level flight on the lines. */
export const flight = block({
  kind: 'flight',
  title: 'Level flight',
  doc: 'Speed, lap time, line pull and trim in steady level flight in calm air, from the balance of all forces and moments. Estimates for comparing set-ups: the pull test, the rule book and the field decide.',
  line: ['speed', 'lap_time', 'pull'],
  fields: { ...flightLinks, ...flightFields, ...fillingFields },
  results: { ...flightResults, ...fillingResults },
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
    readSetup(m, f, f, i, stride, setup);
    if (Math.abs(setup.tailQuarterChord - setup.wingQuarterChord) < LEAST_ARM) return 'no_tail_arm';
    solveFlight(setup, room, s);
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
    writePull(m, f, r, i, setup, s);
    writeForces(m, f, r, i, setup, s);
    writeEngineUse(m, f, r, i, setup, s);
    m[r.status + i] = 0;
    m[r.residual + i] = s.residual;
    m[r.iterations + i] = s.iterations;
    m[r.method + i] = METHODS[s.method];
    return undefined;
  },
  after: {
    fields: ['filling'],
    results: ['laps_per_filling', 'laps_per_filling_low', 'laps_per_filling_high'],
    run: writeLaps,
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
