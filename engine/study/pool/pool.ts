import type { Compiled } from '../../sheet/compile';
import type { Plan } from '../kinds/index';
import type { Rows } from '../run/runner';
import type { Chunk, Chunks } from './chunks';
import type { FromSampler, ToSampler } from './messages';

/** How long a chunk should take, ms: short enough to stop soon, long enough to make the way there and back nothing. */
const CHUNK_MS = 10;
/** Chunks that a sampler has at a time: it begins the next one while its answer is on the way. */
const AHEAD = 2;
const LEAST_CHUNK = 64;
const MOST_CHUNK = 16_384;
/** A sampler that has said nothing for so long is given up, ms: while it starts, and while it computes a chunk. */
const STARTING_MS = 20_000;
const SILENT_MS = 5_000;
/** Samplers that end before they have begun anything: after so many in a row no more are started. */
const MOST_STILLBORN = 3;

/** A sampler in a worker of its own. */
interface Spawned {
  post(message: ToSampler): void;
  end(): void;
}

/** What the place where the engine runs has to lend it, to compute in several workers. */
export interface PoolPorts {
  /** Workers wanted. */
  readonly size: number;
  /** Throws where none can be started. `died`: it failed or ended by itself. */
  spawn(hear: (answer: FromSampler) => void, died: () => void): Spawned;
  /** Calls once, so many ms later; what it returns calls it off. */
  later(ms: number, act: () => void): () => void;
}

/** One run that the pool takes part in. */
interface Job {
  readonly compiled: Compiled;
  readonly plan: Plan;
  readonly chunks: Chunks;
  /** Guess from what has been computed so far. */
  msPerSample(): number;
  take(chunk: Chunk, rows: Rows, ms: number): void;
  /** Those who had this chunk are gone. */
  lost(chunk: Chunk): void;
  /** It can't be computed elsewhere. */
  refused(): void;
  /** Somebody more is ready for it, or somebody less. */
  changed(): void;
}

export interface Joined {
  /** `starting`: nobody is ready for this job yet, but somebody will be. `none`: nobody will. */
  state(): 'ready' | 'starting' | 'none';
  /** No more chunks are handed out; what is out is not waited for. */
  leave(): void;
}

export interface Pool {
  join(job: Job): Joined;
}

interface Member {
  readonly port: Spawned;
  readonly begun: Set<number>;
  readonly out: { readonly run: number; readonly chunk: Chunk }[];
  answered: boolean;
  callOff: () => void;
}

/** Samplers that are started when they are first needed and then stay. One that dies or falls silent is replaced. */
export function startPool({ size, spawn, later }: PoolPorts): Pool {
  const members = new Set<Member>();
  /** Oldest first, which is also who is served first. */
  const jobs = new Map<number, Job>();
  let runs = 0;
  let stillborn = 0;

  function fill(): void {
    while (members.size < size && stillborn < MOST_STILLBORN) {
      let member: Member | undefined;
      try {
        const port = spawn(
          (answer) => member && members.has(member) && hear(member, answer),
          () => member && lose(member),
        );
        member = { port, begun: new Set(), out: [], answered: false, callOff: () => {} };
      } catch {
        stillborn = MOST_STILLBORN;
        return;
      }
      members.add(member);
      for (const [run, job] of jobs) begin(member, run, job);
    }
  }

  function begin(member: Member, run: number, { compiled, plan }: Job): void {
    const { order: _, coarse: __, ...orderless } = plan;
    member.port.post({ ask: 'begin', run, document: compiled.document, plan: orderless });
    expect(member);
  }

  /** It has something to answer: gives it up if it doesn't. */
  function expect(member: Member): void {
    member.callOff();
    member.callOff = later(member.answered ? SILENT_MS : STARTING_MS, () => lose(member));
  }

  function hear(member: Member, answer: FromSampler): void {
    member.answered = true;
    stillborn = 0;
    const { run } = answer;
    const job = jobs.get(run);
    if (answer.tell === 'begun') {
      member.begun.add(run);
      job?.changed();
    } else if (answer.tell === 'refused') {
      jobs.delete(run);
      forget(member, run);
      job?.refused();
    } else {
      const at = member.out.findIndex((each) => each.run === run && each.chunk.from === answer.from);
      const [settled] = at < 0 ? [] : member.out.splice(at, 1);
      if (settled) job?.take(settled.chunk, answer.rows, answer.ms);
    }
    feed(member);
    if (member.out.length > 0 || waiting(member)) expect(member);
    else member.callOff();
  }

  const waiting = (member: Member): boolean => [...jobs.keys()].some((run) => !member.begun.has(run));

  const forget = (member: Member, run: number): void => {
    member.out.splice(0, Number.POSITIVE_INFINITY, ...member.out.filter((each) => each.run !== run));
  };

  function feed(member: Member): void {
    for (const [run, job] of jobs) {
      if (!member.begun.has(run)) continue;
      while (member.out.length < AHEAD) {
        const chunk = job.chunks.next(chunkSize(job));
        if (!chunk) break;
        member.out.push({ run, chunk });
        const samples = job.plan.order.slice(chunk.from, chunk.to);
        member.port.post({ ask: 'rows', run, from: chunk.from, samples });
        expect(member);
      }
    }
  }

  /** Smaller towards the end, so that all end together. */
  function chunkSize(job: Job): number {
    const wanted = Math.min(CHUNK_MS / job.msPerSample(), job.chunks.left() / (2 * AHEAD * members.size));
    return Math.min(Math.max(wanted, LEAST_CHUNK), MOST_CHUNK);
  }

  function lose(member: Member): void {
    if (!members.delete(member)) return;
    member.callOff();
    member.port.end();
    if (!member.answered) stillborn++;
    for (const { run, chunk } of member.out) jobs.get(run)?.lost(chunk);
    if (jobs.size > 0) fill();
    for (const other of members) feed(other);
    for (const job of [...jobs.values()]) job.changed();
  }

  return {
    join(job) {
      const run = ++runs;
      let left = false;
      for (const member of members) begin(member, run, job);
      jobs.set(run, job);
      fill();
      return {
        state() {
          if (!jobs.has(run) || members.size === 0) return 'none';
          for (const member of members) if (member.begun.has(run)) return 'ready';
          return 'starting';
        },
        leave() {
          if (left) return;
          left = true;
          jobs.delete(run);
          for (const member of members) {
            forget(member, run);
            member.begun.delete(run);
            member.port.post({ ask: 'end', run });
            if (member.out.length === 0 && !waiting(member)) member.callOff();
          }
        },
      };
    },
  };
}
