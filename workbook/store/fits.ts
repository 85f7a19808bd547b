import type { EngineService, FitAnswer } from '../../engine/index';
import { type Answers, createAnswers } from './answers';

/** The last answers for pieces of fit. */
export type Fits = Answers<FitAnswer>;

export const createFits = (engine: Pick<EngineService, 'fit'>): Fits =>
  createAnswers((name) => engine.fit(name), failed);

const failed = (fit: string, revision: number, message: string): FitAnswer => ({
  ...{ revision, fit, state: 'fault', message },
  ...{ factors: [], correlation: [], numbers: [], freedom: 0, scatter: Number.NaN, scatterBefore: Number.NaN },
  ...{ errors: 'stated', iterations: 0, takeable: false, sentences: [] },
});
