import type { Theory } from '../block';

export const leadoutsTheory: Theory = {
  equations: [
    {
      title: 'Leadouts at the guide',
      text: 'x_g1 = x_g − b_g/2',
      doc: 'The front leadout; the rear one likewise behind.',
      source: 'Geometry.',
    },
  ],
  notModelled: ['Friction and play of leadouts and bellcrank.', 'Unequal pull of the two lines in level flight.'],
};
