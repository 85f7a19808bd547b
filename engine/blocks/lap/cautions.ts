import type { Caution } from '../block';

export const lapCautions: readonly Caution[] = [
  {
    beside: [
      'least_pull',
      'least_pull_per_weight',
      'least_pull_in_gust',
      'floor_margin',
      'wind_at_floor',
      'greatest_pull_at_handle',
      'greatest_pull_in_gust',
      'greatest_pull_met',
    ],
    sentences: [
      'Nobody controls a model on slack lines. Do not launch, and land at once, before the wind comes near the one that takes the pull away[: {wind_at_floor|m/s} by this estimate, from which gusts take more]; the rule book, club practice and the least sure pilot on the field set the limit of wind.',
      'Wind carries a model and its lines downwind when they break or slacken: stay far from overhead power lines, roads and people on that side most of all. Stop if there is lightning about.',
    ],
  },
];
