import type { Heard, Question, Sound, Told } from '../../physics/index';

export type { HeardLap, NoLaps, Sound, Told, Unheard } from '../../physics/index';

export interface ListeningQuestion extends Question {
  /** Pressure (Pa) and density (kg/m³) of the air; the standard atmosphere at sea level where it is missing. */
  readonly air?: { readonly pressure: number; readonly density: number };
}

export interface HeardFlight extends Heard {
  /** Speed, m/s, and radius of the circle that it makes with the lap, m, where the swing tells them. */
  readonly speed?: Told;
  readonly radius?: Told;
}

/** Listens to a sound beside the design that is open, which it leaves as it is. */
export interface ListeningService {
  /** `progress` is told the share that is done, about every 60 ms. Undefined where somebody ended it, or asked for another meanwhile. */
  listen(
    sound: Sound,
    question: ListeningQuestion,
    progress: (share: number) => void,
  ): Promise<HeardFlight | undefined>;
  haltListening(): Promise<void>;
}
