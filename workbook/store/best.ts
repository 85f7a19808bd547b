import { type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { BestAnswer, BestProgress, EngineService } from '../../engine/index';
import { type Answers, createAnswers } from './answers';

/** The last answers for best compromises, and how far a search has come. */
export interface Bests extends Answers<BestAnswer> {
  /** Undefined until there is news. */
  progress(name: string): ReadonlySignal<BestProgress | undefined>;
  /** Ends a search with what it has found. */
  halt(name: string): void;
}

export function createBests(engine: Pick<EngineService, 'best' | 'haltBest'>): Bests {
  const news = new Map<string, Signal<BestProgress | undefined>>();
  const newsOf = (name: string): Signal<BestProgress | undefined> => {
    const known = news.get(name) ?? signal(undefined);
    news.set(name, known);
    return known;
  };
  const answers = createAnswers<BestAnswer>(async (name) => {
    const told = newsOf(name);
    told.value = undefined;
    return engine.best(name, (progress) => {
      told.value = progress;
    });
  }, failed);
  return { ...answers, progress: newsOf, halt: (name) => void engine.haltBest(name) };
}

const failed = (best: string, revision: number, message: string): BestAnswer => ({
  ...{ revision, best, state: 'fault', message, axes: [], goals: [], wanted: [], tried: 0, unanswered: 0 },
  ...{ reason: '', broken: [], front: 0, shown: [], beaten: [] },
  present: { goals: [], keeps: false, beatenBy: 0 },
});
