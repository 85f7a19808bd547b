export { hear } from './hear';
export { FARTHEST_OFF, LAP_ERROR, LAPS_HEARD, SHORTEST_SOUND, TURNS_ERROR } from './limits';
export type { Heard, HeardLap, NoLaps, Question, Sound, Told, Unheard } from './told';
