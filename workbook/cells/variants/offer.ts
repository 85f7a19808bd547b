import { newVariants } from '../../store/variants';
import type { Offer } from '../shared/new-cell';

export const variantsOffers: readonly Offer[] = [
  {
    key: 'variants',
    word: 'Variants',
    about:
      'Other ways to build it, side by side: results, differences, and what makes them. Nothing changes until you keep one.',
    make: newVariants,
  },
];
