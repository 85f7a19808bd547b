import type { Caution } from '../block';

export const gearCautions: readonly Caution[] = [
  { sentences: ['Look for cracks, bent wire and loose straps after every hard landing.'] },
];
