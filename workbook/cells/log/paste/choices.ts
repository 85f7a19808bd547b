import type { PasteColumn } from '../../shared/paste-columns';
import type { DayOrder } from './day';

/** How a person reads the text otherwise than it shows; what is not said is as it shows. */
export interface FlightChoices {
  readonly matched?: readonly PasteColumn[];
  readonly headed?: boolean;
  readonly order?: DayOrder;
}
