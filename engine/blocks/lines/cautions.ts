import type { Caution } from '../block';

export const linesCautions: readonly Caution[] = [
  {
    sentences: [
      'Stop if a line is kinked, nicked or rusted, or its end has slipped. A line that touches a power line kills: choose the field for a circle[ of {guide_radius|m} radius], with the model and a margin beyond it.',
    ],
  },
];
