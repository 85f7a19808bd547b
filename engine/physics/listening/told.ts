/** A sound as a microphone takes it: one channel. */
export interface Sound {
  readonly samples: Float32Array;
  /** Samples a second. */
  readonly rate: number;
}

/** What the listener knows beforehand. */
export interface Question {
  /** Turns a second that are expected, roughly. */
  readonly about: number;
  /** How often a turn the tone repeats itself: firings of an engine, blades behind a motor. */
  readonly cycles: number;
}

/** A number with its standard error. */
export interface Told {
  readonly value: number;
  readonly error: number;
}

export interface HeardLap {
  /** When its first closest point was heard, s from the start of the sound. */
  readonly from: number;
  /** s */
  readonly time: Told;
  /** Turns a second. */
  readonly turns: number;
  /** Its time is told well enough to be kept. */
  readonly sure: boolean;
}

/**
 * Why a sound doesn't tell the speed. `coarse`: too few samples a second; `higher`, `lower`: its lines fit another multiple of what is expected as
 * well or better; `elsewhere`: it stands too far from what is expected; `near`: the pitch drops too fast as the model
 * passes; `unsteady`: the pitch doesn't move as that of a model on its circle.
 */
export type Unheard =
  | 'short'
  | 'silent'
  | 'coarse'
  | 'no tone'
  | 'higher'
  | 'lower'
  | 'elsewhere'
  | 'near'
  | 'unsteady';
/** Why it tells no laps: the pitch doesn't swing; there is no whole lap; or none is sure enough. */
export type NoLaps = 'no swing' | 'few' | 'unsure';

export interface Heard {
  /** Turns a second, mean over the laps that are told, or over the sound where the pitch doesn't swing. */
  readonly turns: Told | Unheard;
  /** Sure and less sure ones. */
  readonly laps: readonly HeardLap[];
  /** Mean of them, s. */
  readonly lap: Told | NoLaps;
  /** Speed over that of sound, where laps are told. */
  readonly mach: Told | undefined;
  /** Times, s; the tone heard there over the cycles of a turn, 1/s; and what the swing of its lap makes of it, NaN outside the laps. */
  readonly track: {
    readonly times: Float64Array;
    readonly heard: Float64Array;
    readonly fitted: Float64Array;
  };
}
