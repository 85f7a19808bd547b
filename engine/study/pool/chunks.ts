/** Samples order[from] … order[to − 1] of a plan. */
export interface Chunk {
  readonly from: number;
  readonly to: number;
}

/** What of a run is still to be handed out, and what is out. */
export interface Chunks {
  /** The next one, of about so many samples; undefined where there is none. `fresh`: one that nobody has had yet. */
  next(size: number, fresh?: boolean): Chunk | undefined;
  /** It has been computed. */
  settle(chunk: Chunk): void;
  /** Whoever had it is gone: it is handed out again, before anything else. Gives how often that has happened to it. */
  giveBack(chunk: Chunk): number;
  /** Samples that nobody has computed yet. */
  left(): number;
}

export function startChunks(end: number): Chunks {
  const returned: Chunk[] = [];
  const times = new Map<number, number>();
  let handed = 0;
  let left = end;
  return {
    next(size, fresh = false) {
      const again = fresh ? undefined : returned.shift();
      if (again || handed >= end) return again;
      const from = handed;
      handed = Math.min(end, from + Math.max(1, Math.round(size)));
      return { from, to: handed };
    },
    settle({ from, to }) {
      left -= to - from;
    },
    giveBack(chunk) {
      returned.push(chunk);
      const count = (times.get(chunk.from) ?? 0) + 1;
      times.set(chunk.from, count);
      return count;
    },
    left: () => left,
  };
}
