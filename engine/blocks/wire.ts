import { musicWireRows, ratedLoads } from '../library/index';
import { byRows, LINE_KINDS, lineBreakingLoad, musicWireStrength } from '../physics/index';

/** Least strength (Pa) of music wire at a diameter (m): the rows of the wire table, between and beyond them as the law runs. */
export const leastWireStrength = byRows(musicWireStrength, musicWireRows);

/** Breaking load (N) of one line of each kind at a diameter (m), without its ends: the rated rows of the kind, likewise. */
const loads = LINE_KINDS.map((kind) => byRows((diameter) => lineBreakingLoad(kind, diameter), ratedLoads(kind.name)));

export const ratedBreakingLoad = (kind: number, diameter: number): number => loads[kind]!(diameter);
