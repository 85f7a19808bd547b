/** One change for what is seen, by roles of the model; a first amount to try: common practice, no source. */
export interface TrimChange {
  /** A field of a role, the tip weight, or a weight that is put at the nose. */
  readonly of: string;
  /** Signed; a quantity that is told in the units of the design. */
  readonly by: string;
  readonly sign: 1 | -1;
  /** "{by}" and "{to}" stand for the amount and what it comes to. */
  readonly words: string;
  /** Results that it is told by. */
  readonly watch: readonly string[];
  readonly unsaid: string;
}

const LEVEL = 'The model tells of level flight in calm air, not of what is flown above it.';

export const CHANGES: Readonly<Record<string, TrimChange>> = {
  outboard_low: {
    of: 'tip',
    by: '5 g',
    sign: -1,
    words: 'Take {by} out of the tip weight: {to} stay.',
    watch: ['flight.outboard_low', 'flight.pull'],
    unsaid: 'A warp is not in the model: where it has the wing level already, look for one.',
  },
  outboard_high: {
    of: 'tip',
    by: '5 g',
    sign: 1,
    words: 'Put {by} more into the tip: {to} in all.',
    watch: ['flight.outboard_low', 'flight.pull'],
    unsaid: 'A warp is not in the model: where it has the wing level already, look for one.',
  },
  nose_out: {
    of: 'leadouts.x',
    by: '5 mm',
    sign: -1,
    words: 'Move the leadout guide {by} forward, to {to}.',
    watch: ['flight.nose_out', 'flight.pull', 'flight.lap_time'],
    unsaid: '',
  },
  nose_in: {
    of: 'leadouts.x',
    by: '5 mm',
    sign: 1,
    words: 'Move the leadout guide {by} aft, to {to}.',
    watch: ['flight.nose_out', 'flight.pull', 'flight.lap_time'],
    unsaid: '',
  },
  hunting: {
    of: 'nose',
    by: '10 g',
    sign: 1,
    words: 'Put {by} of weight at the nose.',
    watch: ['balance.cg_x', 'balance.static_margin', 'flight.pull'],
    unsaid: 'Slop and sticking are not in the model.',
  },
  slack_overhead: {
    of: 'lines.length',
    by: '0.5 m',
    sign: -1,
    words: 'Shorten the lines by {by}, to {to}.',
    watch: ['flight.pull', 'flight.pull_per_weight', 'flight.lap_time'],
    unsaid: LEVEL,
  },
  slack_upwind: {
    of: 'leadouts.x',
    by: '5 mm',
    sign: 1,
    words: 'Move the leadout guide {by} aft, to {to}.',
    watch: ['lap.least_pull', 'lap.lap_time', 'flight.nose_out'],
    unsaid: 'A gust is taken to last the lap.',
  },
  twitchy: {
    of: 'control.horn_height',
    by: '3 mm',
    sign: 1,
    words: 'Put the pushrod {by} farther out on the horn, at {to}.',
    watch: ['control.ratio', 'control.up_travel', 'control.down_travel'],
    unsaid: '',
  },
  sluggish: {
    of: 'control.horn_height',
    by: '3 mm',
    sign: -1,
    words: 'Put the pushrod {by} farther in on the horn, at {to}.',
    watch: ['control.ratio', 'control.up_travel', 'control.down_travel'],
    unsaid: '',
  },
  noses_over: {
    of: 'body.wheel_x',
    by: '10 mm',
    sign: -1,
    words: 'Move the axle {by} forward, to {to}.',
    watch: ['gear.margin_pavement', 'gear.margin_short_grass', 'gear.margin_long_grass'],
    unsaid: 'Grass differs: a spring scale that pulls the model over it tells its drag.',
  },
};
