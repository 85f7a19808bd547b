import type { Caution } from '../block';

export const controlCautions: readonly Caution[] = [
  {
    beside: ['pull_margin', 'pull_share', 'margin', 'margin_landing'],
    sentences: [
      'Before every flight see that up is up: tilt the handle back with the lines taut, and stop if the elevator does not rise. Stop if the linkage binds, slips or goes over centre, if a hinge, horn, clevis, keeper or screw is loose, or if a line or leadout is caught.',
      'Stop if the margin of the pull is below 1, or an elevator margin below 0. These figures are estimates: the rule book, club practice and the club’s safety officer decide.',
    ],
  },
];
