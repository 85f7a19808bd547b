import type { Caution } from '../block';

/** All pulls at the handle that a design may know of: in calm air, in wind and gusts, and what was typed or met. */
const GREATEST_PULL = [
  'flight.pull_at_handle',
  'lap.greatest_pull_at_handle',
  'lap.greatest_pull_in_gust',
  'strength.greatest_pull',
];

export const flightCautions: readonly Caution[] = [
  {
    beside: ['speed', 'lap_time', 'shaft_speed', 'pitch_speed_share'],
    over: { result: 'pitch_speed_share', at: 1 },
    sentences: [
      'This model would fly faster than its propeller screws itself forward[: {speed|m/s} is {pitch_speed_share|%} of rpm × pitch]. Look at rpm, pitch and lap time: one of them is likely wrong, and the pull follows from them.',
    ],
  },
  {
    beside: ['pull', 'pull_per_weight', 'pull_at_handle', 'pull_per_line', 'breaking_margin'],
    greatest: GREATEST_PULL,
    sentences: [
      'Pull-test handle, lines, connectors, leadouts and bellcrank together, by the current rule book, before each session and after any crash or repair.[ The greatest pull that this design knows of is estimated at {greatest|N} ({greatest|lbf}); the rule book sets the load of the test.]',
      'Keep the whole circle clear of people and stay far from overhead power lines, as far as rule book and local codes say and farther in wind; stop if there is lightning about.',
      'These figures are estimates: the rules, local codes and the club’s safety officer decide.',
    ],
  },
  {
    sentences: [
      'Before every flight: safety strap on before the model is released, and up is up. A junior’s pull and dizziness have limits: stop if the lines pull more than the pilot holds with ease.',
    ],
  },
];
