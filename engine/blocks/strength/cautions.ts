import type { Caution } from '../block';

export const strengthCautions: readonly Caution[] = [
  {
    beside: ['strength_over_test', 'test_over_pull', 'weakest_load'],
    sentences: [
      'Stop if either ratio is below 1. No computed strength replaces the pull test of the whole system (handle, lines, connectors, leadouts, bellcrank) by the current rule book, before each session and after any crash or repair: wear eye protection and stand clear of the lines while they are pulled.',
    ],
  },
];
