import type { Caution } from '../block';

export const raceCautions: readonly Caution[] = [
  {
    beside: ['time', 'stops', 'pit_time', 'best_time', 'laps_per_tank'],
    sentences: [
      'The rule book of the class says where pilots and pit crew stand, how models pass, and who wears a helmet. The crew reaches for a model from behind its propeller and only when the engine has stopped, keeps hands, hoses and sleeves out of the propeller’s plane, protects eyes and ears, and fills no hot engine with fuel on the ground about it.',
      'A fast stop is not worth a start without a look at lines and thong; after a crash or tangle the whole system is pull-tested again.',
    ],
  },
];
