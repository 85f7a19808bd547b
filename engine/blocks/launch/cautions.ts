import type { Caution } from '../block';

export const launchCautions: readonly Caution[] = [
  {
    beside: ['least_pull', 'best_least_pull', 'best_release', 'length'],
    sentences: [
      'Before release: pull test done, safety thong on the wrist, lines and leadouts free, up is up, circle empty. The helper holds the model until the pilot asks for it, stays behind the propeller and outside the lines, and releases without a push toward the pilot.',
      'Lines are slack just after release more often than anywhere else: the pilot is ready to step back, and gives no up elevator before they are tight. The rule book and club practice decide.',
    ],
  },
];
