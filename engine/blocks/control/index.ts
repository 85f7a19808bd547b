import {
  elevatorRoot,
  handleTorque,
  hingeByDeflection,
  hingeByIncidence,
  LANDING_OVER_STALL,
  type LinkageState,
  lineDifference,
  linkageAt,
  newFlightRoom,
  newLinkageState,
  newSetup,
  newSolution,
  newTravel,
  pullToHold,
  stallSpeed,
  stoppedPropellerDragArea,
  travelOf,
  trimAtSpeed,
  turnFor,
  turnForElevator,
  withEngineOff,
} from '../../physics/index';
import { block, type Columns, type Shape } from '../block';
import { setupInWind, windLinks } from '../flight/in-wind';
import { typedOr } from '../measures';
import { heldAt, hingeLaw } from './air';
import { controlCautions } from './cautions';
import { drawControl } from './draw';
import { controlLoadFields, linkageFields } from './fields';
import { measuredPushrod, pushrodForNeutral, readLinkage } from './linkage';
import { controlResults } from './results';
import { controlTemplate } from './template';
import { controlTheory } from './theory';
import { controlTraces } from './traces';

const controlPieces = {
  lap: { link: 'lap', optional: true, doc: 'The least pull in the lap, unless typed.' },
} as const;
const controlFields = { ...windLinks, ...controlPieces, ...linkageFields, ...controlLoadFields } as const;

type Fields = Columns<typeof controlFields>;
type Results = Columns<typeof controlResults>;

const travel = newTravel();
const state = newLinkageState();
const landed = newSolution();
const setup = newSetup();
const room = newFlightRoom();
/** Fastest speed in a manoeuvre over that of level flight, where nobody types it. */
const MANOEUVRE_SPEED = 1.1;

/** Writes down what the linkage is made of, typed or found, where `readLinkage` and the blocks that hang on it read it. */
function writeBuilt(m: Float64Array, f: Fields, r: Results, i: number): void {
  const at = (column: number): number => m[column + i]!;
  const half = at(f.leadouts.bellcrank) / 2;
  const side = at(f.pushrod_side) === 0 ? 1 : -1;
  const direction = side * (Math.PI - at(f.pushrod_angle));
  m[r.front_arm + i] = typedOr(at(f.front_arm), half);
  m[r.rear_arm + i] = typedOr(at(f.rear_arm), half);
  m[r.hole_offset + i] = at(f.hole_offset);
  m[r.bellcrank_z + i] = typedOr(at(f.bellcrank_z), at(f.leadouts.guide_z));
  m[r.pushrod_arm + i] = at(f.pushrod_arm);
  m[r.pushrod_direction + i] = direction;
  m[r.horn_height + i] = at(f.horn_height);
  m[r.horn_direction + i] = (at(f.horn_side) === 0 ? -1 : 1) * at(f.horn_angle);
  m[r.horn_y + i] = typedOr(at(f.horn_y), at(f.leadouts.pivot_y) + at(f.pushrod_arm) * Math.sin(direction));
  m[r.up_line_longer + i] = at(f.up_line_longer);
  m[r.pushrod_measured + i] = measuredPushrod(m, r, f, i);
  m[r.pushrod_length + i] = typedOr(at(f.pushrod_length), at(r.pushrod_measured));
  m[r.hinge_incidence + i] = typedOr(at(f.hinge_incidence), hingeByIncidence(at(f.tail.elevator_share)));
  m[r.hinge_deflection + i] = typedOr(at(f.hinge_deflection), hingeByDeflection(at(f.tail.elevator_share)));
  m[r.friction + i] = at(f.friction);
  m[r.pivot_torque_arm + i] = (at(f.pivot_friction) * at(f.pivot_diameter)) / 2;
  m[r.used_up + i] = at(f.used_up);
  m[r.used_down + i] = at(f.used_down);
}

/** From the handle to the elevator, and what of the pull that takes. */
export const control = block({
  kind: 'control',
  title: 'Control linkage',
  doc: 'From the handle by lines, bellcrank and pushrod to the elevator, by its true geometry: travel, ratio and neutral; what of the least pull the hinge moment takes; and the elevator that is left at flying and landing speed.',
  line: ['ratio', 'margin'],
  lineTitled: true,
  fields: controlFields,
  results: controlResults,
  reasons: {
    open: 'The pushrod of {pushrod_length} does not reach from the bellcrank to the horn: they stand {pushrod_measured} apart with the bellcrank square and the elevator neutral. Type a length near that, or leave it open for one made to measure.',
    horn_locked:
      'The pushrod comes in line with the horn when the bellcrank has turned by {fails_at}, before its travel ends: the elevator locks over centre. A longer horn, a shorter pushrod arm or an earlier stop would keep it free.',
    crank_locked:
      'The pushrod comes in line with its arm of the bellcrank at a turn of {fails_at}, before its travel ends: beyond it the elevator goes back. Set the arm square to the pushrod, or the stop earlier.',
    leadout_locked:
      'A leadout comes in line with its arm of the bellcrank at a turn of {fails_at}, before the stop: there its pull turns nothing. Set the stop earlier, or the leadout holes nearer to the line through the pivot.',
    out_of_hand:
      'The up line is {up_line_longer} longer than the down line: the handle upright holds the bellcrank against a stop. Make the lines up alike.',
  },
  theory: controlTheory,
  cautions: controlCautions,
  run(m, f, r, i, stride) {
    const at = (column: number): number => m[column + i]!;
    writeBuilt(m, f, r, i);
    const linkage = readLinkage(m, r, f, i);
    const limits = {
      handleUp: at(f.handle_up),
      handleDown: at(f.handle_down),
      stopUp: at(f.stop_up),
      stopDown: at(f.stop_down),
    };
    travelOf(linkage, limits, travel);
    m[r.fails_at + i] = travel.failsAt;
    switch (travel.status) {
      case 'settled':
        break;
      case 'open':
        return 'open';
      case 'horn locked':
        return 'horn_locked';
      case 'crank locked':
        return 'crank_locked';
      case 'leadout locked':
        return 'leadout_locked';
      case 'out of hand':
        return 'out_of_hand';
    }
    m[r.fails_at + i] = Number.NaN;
    const { up, down, neutral } = travel;
    const [high, low] = [up.elevator, down.elevator];
    m[r.up_travel + i] = high;
    m[r.down_travel + i] = -low;
    m[r.up_line + i] = linkage.sense > 0 ? 0 : 1;
    m[r.ratio + i] = neutral.ratio;
    m[r.ratio_up + i] = up.ratio;
    m[r.ratio_down + i] = down.ratio;
    m[r.neutral + i] = neutral.elevator;
    m[r.pushrod_change + i] = pushrodForNeutral(linkage, neutral.turn) - at(r.pushrod_length);
    const level = elevatorRoot(linkage, 0, down.turn, up.turn);
    m[r.status + i] = level.status === 'settled' ? 0 : 1;
    m[r.iterations + i] = level.iterations;
    m[r.residual + i] = level.residual;
    linkageAt(linkage, level.status === 'settled' ? level.value : Number.NaN, state);
    m[r.handle_at_neutral + i] = state.handle;
    // The handle stands upright at that turn with the up line longer by what it pulls in there.
    m[r.line_change + i] = -linkage.spacing * Math.sin(state.handle);
    m[r.up_limit + i] = travel.upLimit;
    m[r.down_limit + i] = travel.downLimit;
    m[r.handle_at_up + i] = up.handle;
    m[r.handle_at_down + i] = down.handle;
    m[r.up_turn + i] = up.turn;
    m[r.down_turn + i] = down.turn;
    m[r.symmetry + i] = symmetryOf(linkage, up, down, neutral);

    const pull = typedOr(at(f.least_pull), at(f.flight.pull));
    const speed = at(f.flight.speed);
    const most = typedOr(at(f.greatest_speed), MANOEUVRE_SPEED * speed);
    m[r.least_pull + i] = pull;
    m[r.greatest_speed + i] = most;
    const law = hingeLaw(m, r, f, i);
    const trimmed = at(f.flight.elevator);
    m[r.hinge_moment + i] = law(trimmed, speed);
    linkageAt(linkage, turnForElevator(linkage, trimmed, down.turn, up.turn), state);
    m[r.trim_difference + i] = lineDifference(heldAt(m, r, state, law(trimmed, speed), false, i), at(f.flight.pull));
    let worst = -1;
    for (const [name, elevator] of [
      ['moment_up', Math.min(at(f.used_up), high)],
      ['moment_down', Math.max(-at(f.used_down), low)],
    ] as const) {
      linkageAt(linkage, turnForElevator(linkage, elevator, down.turn, up.turn), state);
      const moment = law(elevator, most);
      m[r[name] + i] = moment;
      const held = heldAt(m, r, state, moment, true, i);
      const needed = pullToHold(held);
      if (!(needed > worst)) continue;
      worst = needed;
      m[r.most_moment + i] = moment;
      const difference = lineDifference(held, pull);
      m[r.line_difference + i] = Math.sign(moment) * difference;
      m[r.pull_needed + i] = needed;
      m[r.pull_share + i] = needed / pull;
      m[r.pull_margin + i] = pull / needed;
      m[r.pushrod_force + i] = -moment / state.rod.hornLever;
      const level = lineDifference(held, at(f.flight.pull));
      m[r.handle_torque + i] = handleTorque(linkage.spacing, at(f.overhang), state.handle, at(f.flight.pull), level);
    }

    m[r.needed + i] = trimmed;
    m[r.margin + i] = high - trimmed;
    m[r.margin_down + i] = trimmed - low;
    setupInWind(m, f, i, stride, setup);
    const landing = typedOr(at(f.landing_speed), LANDING_OVER_STALL * stallSpeed(setup));
    m[r.landing_speed + i] = landing;
    const off = withEngineOff(setup, stoppedPropellerDragArea(at(f.engine.propeller_diameter)));
    const balanced = trimAtSpeed(off, landing, room, landed);
    m[r.needed_landing + i] = balanced ? landed.elevator : Number.NaN;
    m[r.margin_landing + i] = balanced ? high - landed.elevator : Number.NaN;
    return undefined;
  },
  traces: controlTraces,
  templates: (m, _, r) =>
    controlTemplate({
      front: m[r.front_arm]!,
      rear: m[r.rear_arm]!,
      inboard: m[r.hole_offset]!,
      pushrod: m[r.pushrod_arm]!,
      pushrodDirection: m[r.pushrod_direction]!,
      horn: m[r.horn_height]!,
      hornDirection: m[r.horn_direction]!,
      rod: m[r.pushrod_length]!,
    }),
  draw(m, f, r): Shape[] {
    return drawControl(m, f, r);
  },
});

/** Elevator from neutral at the same tilt each way, up over down; at the smaller of both ends. */
function symmetryOf(
  linkage: Parameters<typeof linkageAt>[0],
  up: LinkageState,
  down: LinkageState,
  neutral: LinkageState,
): number {
  const tilt = Math.min(up.handle, -down.handle);
  const moved = (handle: number): number => {
    linkageAt(linkage, turnFor(linkage, handle, down.turn, up.turn), state);
    return Math.abs(state.elevator - neutral.elevator);
  };
  return moved(tilt) / moved(-tilt);
}
