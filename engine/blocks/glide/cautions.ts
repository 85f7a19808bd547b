import type { Caution } from '../block';

export const glideCautions: readonly Caution[] = [
  {
    beside: ['laps', 'time', 'least_pull', 'roll_out', 'shut_off_bearing'],
    sentences: [
      'Keep the whole circle clear until the model stands: a glide ends where wind and ground let it, not where a number says. Nobody reaches for a model whose propeller still turns.',
      'Lines that slacken in the glide take the elevator with them: the pilot has room behind to step back. The rule book and club practice decide.',
    ],
  },
];
