import type { Caution } from '../block';

export const shutoffCautions: readonly Caution[] = [
  {
    beside: ['used_margin', 'stop_margin', 'force_margin'],
    sentences: [
      'Stop if the margin beyond the most down used or that of the force is not above what play, stretch and wear take: an engine that shuts off low and inverted, or does not shut off, hurts. Try it on the ground with the lines pulled by a scale, engine running and the model held fast, before the first flight and after any change of the linkage; the rule book of the class says whether one is required.',
    ],
  },
];
