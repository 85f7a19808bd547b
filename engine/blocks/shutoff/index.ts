import {
  type Cable,
  cableLever,
  cablePulled,
  linkageAt,
  newLinkageState,
  pullToHold,
  turnToPull,
} from '../../physics/index';
import { air } from '../air/index';
import { block, type Columns, type Field, type Result } from '../block';
import { heldAt, hingeLaw } from '../control/air';
import { readLinkage } from '../control/linkage';
import { controlResults } from '../control/results';
import { flightResults } from '../flight/results';
import { leadoutResults } from '../leadouts/index';
import { linesResults } from '../lines/results';
import { ANGLE, degrees, MILLIMETRES, NEWTONS, PLAIN, typedOr } from '../measures';
import { tailResults } from '../tail/results';
import { shutoffCautions } from './cautions';
import { shutoffTheory } from './theory';

const PRACTICE = 'Common practice, no source.';

const shutoffFields = {
  cable_arm: {
    ...MILLIMETRES,
    symbol: 'a_s',
    title: 'Arm of the cable',
    doc: 'From the pivot of the bellcrank to the hole of the cable.',
    default: 0.025,
    range: [0.003, 0.15],
    basis: PRACTICE,
  } as Field,
  cable_length: {
    ...MILLIMETRES,
    symbol: 'c_s',
    title: 'Free length of the cable',
    doc: 'From that hole to where the cable is led on, with the bellcrank square.',
    default: 0.15,
    range: [0.01, 1],
    basis: PRACTICE,
  } as Field,
  cable_angle: {
    ...ANGLE,
    symbol: 'ν_s',
    title: 'Angle of the cable',
    doc: 'Between its arm and the cable, with the bellcrank square. Down elevator pulls it; more than 90° pulls little at first and more toward full down.',
    default: degrees(150),
    range: [degrees(5), degrees(175)],
    basis: PRACTICE,
  } as Field,
  slack: {
    ...MILLIMETRES,
    symbol: 's_0',
    title: 'Slack of the cable',
    doc: 'Pull that only makes it taut, with the bellcrank square at first. A longer slack trips later.',
    default: 0.0075,
    range: [0, 0.1],
    basis: PRACTICE,
  } as Field,
  trip_way: {
    ...MILLIMETRES,
    symbol: 's_t',
    title: 'Way of the shutoff to its trip',
    doc: 'How far the taut cable then moves its lever or pin before the fuel is shut.',
    default: 0.0025,
    range: [0, 0.05],
    basis: PRACTICE,
  } as Field,
  trip_force: {
    ...NEWTONS,
    symbol: 'F_s',
    title: 'Trip force',
    doc: 'In the cable at the trip, by a spring scale, engine shaking or not: the greater.',
    default: 3,
    range: [0, 100],
    basis: PRACTICE,
  } as Field,
  least_pull: {
    ...NEWTONS,
    symbol: 'T_1',
    title: 'Least pull when it is worked',
    doc: 'Of all lines at the model.',
    default: Number.NaN,
    range: [0, 5000],
    basis: 'The least pull of the control linkage, which takes that of the lap in wind where the design has one.',
  } as Field,
} as const;

const angle = (symbol: string, title: string, doc: string): Result => ({ ...ANGLE, symbol, title, doc });
const way = (symbol: string, title: string, doc: string): Result => ({
  ...MILLIMETRES,
  symbol,
  title,
  doc,
  detail: true,
});

const shutoffResults = {
  trip_down: angle('δ_s', 'Down elevator at the trip', 'Trailing edge down: there it shuts the fuel.'),
  used_margin: {
    ...angle(
      'Δδ_1',
      'Beyond the most down used',
      'Down elevator at the trip less the most down used in flight. Below 0 a manoeuvre shuts the engine off: stop, and give the cable more slack.',
    ),
    least: { at: 0, because: 'a manoeuvre shuts the engine off', stops: true },
  },
  stop_margin: angle(
    'Δδ_2',
    'Before full down',
    'Full down less down elevator at the trip: what stretch, wear and a hasty hand may take. Near 0 it may not trip.',
  ),
  force_margin: {
    ...PLAIN,
    symbol: 'F_a/F_s',
    title: 'Cable force over trip force',
    doc: 'What the bellcrank gives in the cable at the least pull, the elevator held down there, over the trip force. Below 1 it cannot be tripped: stop.',
    least: { at: 1, because: 'the lines cannot trip the shutoff', stops: true },
  },
  pull_needed: {
    ...NEWTONS,
    symbol: 'T_s',
    title: 'Pull that trips it',
    doc: 'Least pull of both lines, elevator and cable held together.',
  },
  cable_force: {
    ...NEWTONS,
    symbol: 'F_a',
    title: 'Force that the bellcrank gives',
    doc: 'In the cable at the trip, with the whole of the least pull in the down line. Not above 0: the elevator takes all.',
    detail: true,
  },
  taut_down: {
    ...angle('δ_t', 'Down elevator at taut', 'Where the slack is gone and the cable begins to work.'),
    detail: true,
  },
  trip_turn: { ...angle('β_s', 'Bellcrank at the trip', 'Its turn from square, down.'), detail: true },
  cable_needed: way('s_s', 'Cable to be pulled', 'Slack and way to the trip.'),
  cable_travel: way('s_d', 'Cable pulled at full down', 'By the bellcrank, from square.'),
  overtravel: way(
    's_e',
    'Way beyond the trip',
    'That full down pulls further: the shutoff must take it without stopping the elevator.',
  ),
} as const satisfies Readonly<Record<string, Result>>;

const links = {
  air: { link: 'air', results: air.results, doc: 'Density, for the hinge moment.' },
  tail: { link: 'tail', results: tailResults, doc: 'The elevator.' },
  leadouts: { link: 'leadouts', results: leadoutResults, doc: 'Pivot and guides.' },
  lines: { link: 'lines', results: linesResults, doc: 'Spacing at the handle.' },
  flight: { link: 'flight', results: flightResults, doc: 'Speed and trim.' },
  control: { link: 'control', results: controlResults, doc: 'The linkage, and the most down used in flight.' },
} as const;

type Fields = Columns<typeof links & typeof shutoffFields>;
const state = newLinkageState();

const cableOf = (m: Float64Array, f: Fields, i: number): Cable => ({
  arm: m[f.cable_arm + i]!,
  length: m[f.cable_length + i]!,
  angle: m[f.cable_angle + i]!,
});

/** A fuel shutoff that full down elevator trips by a cable from the bellcrank. */
export const shutoff = block({
  kind: 'shutoff',
  title: 'Fuel shutoff',
  doc: 'A shutoff that full down elevator trips by a cable from the bellcrank: at which down elevator it trips, how far that lies beyond the most down used in flight and before full down, and whether the bellcrank has the force. Weigh lever, spring, valve and cable, and give them a row of their own in the list of parts with their station: the list of what is often forgotten has it.',
  line: ['used_margin', 'force_margin'],
  lineTitled: true,
  fields: { ...links, ...shutoffFields },
  results: shutoffResults,
  reasons: {
    no_pull:
      'Down elevator does not pull the cable: its arm comes in line with it before full down. Type a wider angle between arm and cable.',
    never_trips:
      'It does not trip: full down pulls {cable_travel} of the cable, and slack and way to the trip take {cable_needed}. Less slack, a longer arm, or more down travel would trip it.',
  },
  theory: shutoffTheory,
  cautions: shutoffCautions,
  run(m, f, r, i) {
    const at = (column: number): number => m[column + i]!;
    const cable = cableOf(m, f, i);
    const full = -at(f.control.down_turn);
    const needed = at(f.slack) + at(f.trip_way);
    m[r.cable_needed + i] = needed;
    m[r.cable_travel + i] = cablePulled(cable, full);
    if (!(cableLever(cable, 0) > 0 && cableLever(cable, full) > 0)) return 'no_pull';
    const turn = turnToPull(cable, needed);
    if (!(turn <= full)) return 'never_trips';
    const linkage = readLinkage(m, f.control, f, i);
    linkageAt(linkage, -turnToPull(cable, at(f.slack)), state);
    m[r.taut_down + i] = -state.elevator;
    linkageAt(linkage, -turn, state);
    const trip = -state.elevator;
    m[r.trip_turn + i] = turn;
    m[r.trip_down + i] = trip;
    m[r.used_margin + i] = trip - at(f.control.used_down);
    m[r.stop_margin + i] = at(f.control.down_travel) - trip;
    m[r.overtravel + i] = at(r.cable_travel) - needed;

    const pull = typedOr(at(f.least_pull), at(f.control.least_pull));
    // The elevator is pressed down there at the speed of level flight, or helps where the air does it.
    const moment = hingeLaw(m, f.control, f, i)(state.elevator, at(f.flight.speed));
    const held = heldAt(m, f.control, state, moment, true, i);
    const lever = cableLever(cable, turn);
    const given = pull * (held.downLever - held.pivotFriction) + Math.min(0, held.moment);
    m[r.cable_force + i] = given / lever;
    m[r.force_margin + i] = given / (lever * at(f.trip_force));
    m[r.pull_needed + i] = pullToHold({ ...held, moment: Math.min(0, held.moment) - at(f.trip_force) * lever });
    return undefined;
  },
});
