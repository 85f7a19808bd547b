import { positive } from '../domain';
import { bestSwing } from './best-swing';
import { against } from './judge';
import { type LapInTrack, lapsIn } from './laps';
import { AGREE, LAP_ERROR, LEAST_ERROR, LEAST_MACH_ERROR, STEADY, TOO_FAST_A_CHANGE, TURNS_ERROR } from './limits';
import { medianOf } from './median';
import { passesOf } from './passes';
import { type Pitches, pitchesIn } from './pitches';
import { dropOf, type Swing } from './swing';
import type { Heard, Question, Sound, Told, Unheard } from './told';

/** This share of the pitches must lie near their middle for there to be no swing. */
const MOST_LEVEL = 0.7;

/** What a sound says of a model's engine speed and laps, or why it says nothing. Yields the share of the work that is done. */
export function* hear(sound: Sound, question: Question): Generator<number, Heard> {
  positive('samples a second', sound.rate);
  const { about, cycles } = question;
  positive('turns a second expected', about);
  positive('cycles a turn', cycles);
  const pitches = yield* pitchesIn(sound, question);
  if (typeof pitches === 'string') return untold(pitches);
  const { track, apart } = pitches;
  const level = levelPieces(track.pitch);
  if (level) return steadyTone(pitches, level, cycles);
  const swing = bestSwing(track, apart);
  if (!swing) return withTrack(untold(against(pitches, allOf(pitches), pitches.tone) ?? 'unsteady'), pitches, cycles);
  if (dropOf(swing) > TOO_FAST_A_CHANGE) return withTrack({ ...untold('near'), lap: 'unsure' }, pitches, cycles);
  const passes = passesOf(track, swing, apart);
  const laps = lapsIn(track, swing, passes);
  if (laps.length > 0) return toldLaps(pitches, swing, laps, cycles);
  const why = against(pitches, allOf(pitches), Math.exp(swing.pitch)) ?? 'unsteady';
  const few = passes.filter(Boolean).length < 2;
  return withTrack({ ...untold(why), lap: few ? 'few' : 'unsure' }, pitches, cycles);
}

const allOf = ({ track }: Pitches): readonly number[] => [...track.pitch.keys()];

/** The pieces whose pitch stays where most of them are; undefined where it swings. */
function levelPieces(pitch: Float64Array): readonly number[] | undefined {
  const middle = medianOf(pitch);
  const level = [...pitch.keys()].filter((k) => Math.abs(pitch[k]! - middle) < 2 * STEADY);
  const scatter = 1.4826 * medianOf(pitch.map((value) => Math.abs(value - middle)));
  return scatter < STEADY && level.length > MOST_LEVEL * pitch.length ? level : undefined;
}

/** Heard from the middle of the circle, or of a model at rest. */
function steadyTone(pitches: Pitches, level: readonly number[], cycles: number): Heard {
  const { pitch } = pitches.track;
  const mean = level.reduce((sum, k) => sum + Math.exp(pitch[k]!), 0) / level.length;
  const spread = Math.sqrt(level.reduce((sum, k) => sum + (pitch[k]! - Math.log(mean)) ** 2, 0) / level.length);
  const error = Math.max(LEAST_ERROR, spread * Math.sqrt(pitches.apart / level.length));
  const turns = against(pitches, level, mean) ?? { value: mean / cycles, error: (error * mean) / cycles };
  return withTrack({ ...untold('unsteady'), turns, lap: 'no swing' }, pitches, cycles);
}

function toldLaps(pitches: Pitches, swing: Swing, laps: readonly LapInTrack[], cycles: number): Heard {
  const pieces = laps.flatMap((lap) => lap.pieces);
  const seconds = laps.reduce((sum, { time }) => sum + time.value, 0);
  const mean = laps.reduce((sum, { tone, time }) => sum + tone * time.value, 0) / seconds;
  const error = Math.max(LEAST_ERROR, swing.scatter * Math.sqrt(pitches.apart / pieces.length));
  const bySwing = laps.reduce((sum, lap) => sum + lap.bySwing * lap.time.value, 0) / seconds;
  const agrees = Math.abs(mean / bySwing - 1) <= AGREE && error <= TURNS_ERROR;
  const why = against(pitches, pieces, mean) ?? (agrees ? undefined : 'unsteady');
  if (why !== undefined) return withTrack({ ...untold(why), lap: 'unsure' }, pitches, cycles);
  const lap = meanOf(laps.map(({ time }) => time));
  const heard: Heard = {
    turns: { value: mean / cycles, error: (error * mean) / cycles },
    laps: laps.map(({ from, time, tone }) => {
      return { from, time, turns: tone / cycles, sure: time.error <= LAP_ERROR };
    }),
    lap: lap.error <= LAP_ERROR ? lap : 'unsure',
    mach: { value: swing.mach, error: Math.hypot(swing.errors.mach, LEAST_MACH_ERROR * swing.mach) },
    track: NONE,
  };
  return withTrack(heard, pitches, cycles, laps);
}

const meanOf = (all: readonly Told[]): Told => ({
  value: all.reduce((sum, { value }) => sum + value, 0) / all.length,
  error: Math.sqrt(all.reduce((sum, { error }) => sum + error ** 2, 0)) / all.length,
});

const NONE = { times: new Float64Array(0), heard: new Float64Array(0), fitted: new Float64Array(0) };

const untold = (why: Unheard): Heard => ({
  ...{ turns: why, laps: [], lap: 'few', mach: undefined },
  track: NONE,
});

/** With what was followed, and what the swing makes of it in each lap. */
function withTrack(
  heard: Heard,
  { track: { times, pitch } }: Pitches,
  cycles: number,
  laps: readonly LapInTrack[] = [],
): Heard {
  const fitted = new Float64Array(times.length).fill(Number.NaN);
  for (const lap of laps) for (const [n, k] of lap.pieces.entries()) fitted[k] = lap.fitted[n]! / cycles;
  return { ...heard, track: { times, heard: pitch.map((value) => Math.exp(value) / cycles), fitted } };
}
