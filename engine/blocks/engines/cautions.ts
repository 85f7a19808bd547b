import type { Caution } from '../block';

/** Of every kind of engine and motor. */
export const engineCautions: readonly Caution[] = [
  {
    sentences: [
      'Hold the model fast for starting; keep hands, sleeves and onlookers out of the propeller’s plane; protect eyes and ears. Methanol burns with a flame that cannot be seen. Keep an electric motor unarmed until the model is held, and watch packs while they charge.',
    ],
  },
];
