import type { Caution } from '../block';

export const roomCautions: readonly Caution[] = [
  {
    beside: ['spare'],
    sentences: [
      'Leave the fuel tube a wide bend and keep it clear of the hot cylinder: a tube that kinks or leaks stops the engine, and fuel on it burns.',
    ],
  },
];
