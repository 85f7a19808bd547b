import { type Compiled, compile } from '../../sheet/compile';
import type { Library } from '../../sheet/specs';
import { runnerOf } from '../kinds/index';
import type { Rows, Runner } from '../run/runner';
import type { FromSampler, ToSampler } from './messages';

/** Programs that are kept: the design, its baseline, and those of the last edits. */
const KEPT = 4;

export interface SamplerPorts {
  /** `moved`: buffers that go over without being copied. */
  post(answer: FromSampler, moved: readonly ArrayBufferLike[]): void;
  /** Milliseconds. */
  now(): number;
}

/** Runs samples of sweeps for an engine somewhere else. Gives the function that takes what it is asked. */
export function startSampler(library: Library, { post, now }: SamplerPorts): (message: ToSampler) => void {
  const programs = new Map<string, Compiled>();
  const runners = new Map<number, Runner>();

  function programOf({ document, plan }: Extract<ToSampler, { ask: 'begin' }>): Compiled {
    const compiled = programs.get(plan.shape) ?? compile(document, library);
    // The one used last goes to the end; the one not used for longest is forgotten.
    programs.delete(plan.shape);
    programs.set(plan.shape, compiled);
    if (programs.size > KEPT) programs.delete(programs.keys().next().value!);
    return compiled;
  }

  function answer(message: ToSampler): void {
    const { run } = message;
    switch (message.ask) {
      case 'begin':
        runners.set(run, runnerOf(programOf(message), message.plan));
        post({ tell: 'begun', run }, []);
        return;
      case 'rows': {
        const runner = runners.get(run);
        if (!runner) return;
        const before = now();
        const rows = runner.run(message.samples);
        post({ tell: 'rows', run, from: message.from, rows, ms: now() - before }, buffersOf(rows));
        return;
      }
      case 'end':
        runners.get(run)?.finish();
        runners.delete(run);
    }
  }

  return (message) => {
    try {
      answer(message);
    } catch {
      // The engine meets the same error when it computes these samples itself, and has somebody to tell of it.
      runners.delete(message.run);
      post({ tell: 'refused', run: message.run }, []);
    }
  };
}

const buffersOf = ({ samples, columns, why }: Rows): ArrayBufferLike[] => [
  samples.buffer,
  why.buffer,
  ...columns.map((column) => column.buffer),
];
