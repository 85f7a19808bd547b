import type { Caution } from '../block';

export const flightCautions: readonly Caution[] = [
  {
    beside: ['pull', 'pull_per_weight', 'pull_at_handle', 'pull_per_line', 'breaking_margin'],
    sentences: [
      'Pull-test handle, lines, connectors, leadouts and bellcrank together, by the current rule book, before each session and after any crash or repair.[ The pull is estimated at {pull|N} ({pull|lbf}); the rule book sets the load of the test.]',
      'Keep the whole circle clear of people and of overhead power lines, and stop if there is lightning about.',
      'These figures are estimates: the rules, local codes and the club’s safety officer decide.',
    ],
  },
  {
    sentences: [
      'Before every flight: safety strap on before the model is released, and up is up. A junior’s pull and dizziness have limits: stop if the lines pull more than the pilot holds with ease.',
    ],
  },
];
