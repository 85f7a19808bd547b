import { type Constants, newConstants } from './constants';
import { newStep, type Step } from './elimination';
import { type Balance, newBalance } from './loads';
import { newScan, type Scan } from './search';
import { newState, type State } from './state';

/** What a steady flight is worked out in; whoever solves flights holds one. */
export interface FlightRoom {
  readonly c: Constants;
  readonly state: State;
  readonly b: Balance;
  readonly at: Step;
  readonly looked: Scan;
}

export const newFlightRoom = (): FlightRoom => ({
  c: newConstants(),
  state: newState(),
  b: newBalance(),
  at: newStep(),
  looked: newScan(),
});
