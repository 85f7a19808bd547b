import type { EngineService, MendsAnswer } from '../../engine/index';
import { type Answers, createAnswers } from './answers';

/** The last answers for lists of what mends. */
export type Mends = Answers<MendsAnswer>;

export const createMends = (engine: Pick<EngineService, 'mends'>): Mends =>
  createAnswers((name) => engine.mends(name), failed);

const failed = (mends: string, revision: number, message: string): MendsAnswer => ({
  ...{ revision, mends, state: 'fault', message },
  ...{ now: Number.NaN, wanted: Number.NaN, met: false, found: [] },
});
