import type { EngineService, WeighingAnswer } from '../../engine/index';
import { type Answers, createAnswers } from './answers';

/** The last answers for benches. */
export type Weighings = Answers<WeighingAnswer>;

export const createWeighings = (engine: Pick<EngineService, 'weighing'>): Weighings =>
  createAnswers((name) => engine.weighing(name), failed);

const NOTHING = { mass: Number.NaN, x: Number.NaN };

const failed = (weighing: string, revision: number, message: string): WeighingAnswer => ({
  ...{ revision, weighing, state: 'fault', message, parts: [], next: '', history: [], done: Number.NaN },
  ...{ weighed: { ...NOTHING, y: Number.NaN }, finished: { ...NOTHING, band: Number.NaN } },
  ...{ wanted: Number.NaN, within: Number.NaN },
});
