import type { Offer } from '../shared/new-cell';
import { newLog } from './new-log';

export const logOffers: readonly Offer[] = [
  {
    key: 'log',
    word: 'Log of flown laps',
    about: 'What was timed, pulled and read on flights, one row a flight.',
    make: newLog,
  },
];
