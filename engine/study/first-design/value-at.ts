import type { Live } from '../../sheet/live';

/** The number that a design has there, SI; NaN where it has none. */
export const valueAt = (live: Live, path: string): number => {
  const slot = live.compiled.program.slotOf.get(path);
  return slot === undefined ? Number.NaN : live.state.m[slot]!;
};
