import type { EngineService, FlownAnswer } from '../../engine/index';
import { type Answers, createAnswers } from './answers';

/** What the design would have done on the flights of logs. */
export type Flown = Answers<FlownAnswer>;

export const createFlown = (engine: Pick<EngineService, 'flown'>): Flown =>
  createAnswers((name) => engine.flown(name), failed);

const failed = (log: string, revision: number, message: string): FlownAnswer => ({
  ...{ revision, log, state: 'fault', message, numbers: [], leftOut: [] },
});
