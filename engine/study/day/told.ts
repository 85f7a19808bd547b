/** Grounds that a gear stands on, as the gear tells them. */
export const GROUNDS = ['pavement', 'short_grass', 'long_grass'] as const;
export type Ground = (typeof GROUNDS)[number];

/** The day at the field, SI; what is not said is as the design has it. */
export interface DayForm {
  readonly temperature?: number;
  /** At the field; missing: by the elevation. */
  readonly pressure?: number;
  readonly elevation?: number;
  readonly wind?: number;
  /** Wind of a gust; no less than the mean wind. */
  readonly gusts?: number;
  /** Compass bearings: where the wind blows from, where the pit is from the pilot. */
  readonly from?: number;
  readonly pit?: number;
  readonly ground?: Ground;
  /** Tip weights on hand, kg, and places of the leadout guide that there are, m. */
  readonly tips?: readonly number[];
  readonly guides?: readonly number[];
  /** The day itself, year first: what the log has of it counts. */
  readonly day: string;
}

/** The form with nothing missing. */
export type WholeDay = Required<Omit<DayForm, 'pressure' | 'tips' | 'guides'>> &
  Pick<DayForm, 'pressure' | 'tips' | 'guides'>;

/** Tip weight and guide with what they give, SI. */
export interface DaySetUp {
  /** NaN where the design has no tip weight or no guide to be moved. */
  readonly tip: number;
  readonly guide: number;
  readonly least: number;
  readonly lapTime: number;
  /** Lap time over that of the design as it stands in the same wind. */
  readonly longer: number;
  /** It is what the model has now. */
  readonly now: boolean;
}

export interface DayBand {
  /** Mean wind, m/s. */
  readonly from: number;
  readonly to: number;
  /** Missing: nothing on hand keeps the pull wanted. */
  readonly setUp?: DaySetUp;
}

/** The race of the day, SI; counts are laps. */
export interface RaceCard {
  readonly laps: number;
  readonly time: number;
  readonly lapTime: number;
  /** Whether lap time and fuel are from flights of the day in the log. */
  readonly timed: boolean;
  readonly measured: boolean;
  readonly shutOffLap: number;
  readonly stops: number;
  readonly reserve: number;
  /** Fuel that a stop puts in, m³; 0 without a stop. */
  readonly refuel: number;
  readonly restart: number;
  readonly pit: number;
  readonly fuelPerLap: number;
  readonly fastTime: number;
  readonly rangeTime: number;
  readonly bestNeedle: number;
  readonly bestStops: number;
  readonly bestTime: number;
}

export interface DayCard {
  readonly ok: true;
  readonly form: WholeDay;
  /** Weight of the model, N. */
  readonly weight: number;
  /** Around the lap in the mean wind and in the gusts, N; NaN with a reason where there is no such lap. */
  readonly least: number;
  readonly leastInGust: number;
  readonly leastBearing: number;
  readonly greatest: number;
  readonly floor: number;
  readonly testLoad: number;
  readonly lapTime: number;
  readonly tightUpTo: number;
  readonly clockwise: boolean;
  /** Compass bearings from the pilot; NaN where there is none. */
  readonly release: number;
  readonly leastInRun: number;
  readonly shutOff: number;
  readonly shutOffBefore: number;
  readonly now: { readonly tip: number; readonly guide: number };
  readonly setUp?: DaySetUp;
  readonly bands: readonly DayBand[];
  readonly gear: {
    readonly margin: number;
    readonly axle: number;
    /** Farthest aft station of the axle that keeps the margin wanted; NaN where none near does. */
    readonly wanted: number;
    readonly marginWanted: number;
  };
  /** On a tank or charge. */
  readonly laps: { readonly likely: number; readonly fewest: number; readonly most: number };
  /** What is broken on this day, each a sentence that begins behind “Stop: ”. */
  readonly broken: readonly string[];
  readonly race?: RaceCard;
}

export type DayAnswer = DayCard | { readonly ok: false; readonly message: string };
