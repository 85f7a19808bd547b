import type { Caution } from '../block';

export const tankCautions: readonly Caution[] = [
  {
    beside: ['volume', 'usable', 'laps', 'fuel_apart'],
    over: { result: 'fuel_apart', at: 0.05 },
    sentences: [
      'The tank and the table of weights do not count the same fuel[: the full tank is {fuel_apart|%} apart from the table]. CG and pull follow the table: give both one volume.',
    ],
  },
  {
    beside: ['volume', 'usable', 'laps', 'head_start', 'head_change', 'level_rest'],
    sentences: [
      'Fuel burns: methanol with a flame that cannot be seen, and the vapour of ether along the ground to a spark far off. Fill outdoors with the engine stopped, away from heat, smokers and batteries on charge, with an extinguisher at hand; wipe up what is spilt, and keep fuel and its vapour from skin, eyes and lungs. A pressurised tank sprays when its tube is pulled off.',
      'The label of the fuel and local codes say how it is kept and carried.',
    ],
  },
];
