import type { Heard, Question, Sound } from '../../physics/index';

/** Listens to a sound beside the design that is open, which it leaves as it is. */
export interface ListeningService {
  /** `progress` is told the share that is done, about every 60 ms. Undefined where somebody ended it, or asked for another meanwhile. */
  listen(sound: Sound, question: Question, progress: (share: number) => void): Promise<Heard | undefined>;
  haltListening(): Promise<void>;
}
