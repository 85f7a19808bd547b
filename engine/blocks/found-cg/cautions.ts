import type { Caution } from '../block';

export const foundCgCautions: readonly Caution[] = [
  {
    sentences: [
      'Unplug the pack of an electric model, leave it in its place, and keep the propeller clear of hands.',
      'Hang a model over something soft.',
    ],
  },
];
