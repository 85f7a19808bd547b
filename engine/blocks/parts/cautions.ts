import type { Caution } from '../block';

export const partsCautions: readonly Caution[] = [
  {
    sentences: [
      'Dust of wood, glass and carbon and the fumes of dope, glue and fuel harm the lungs: wear a mask and work in moving air. Wash after handling lead.',
    ],
  },
];
