import { type Heard, hear, type Question, type Sound } from '../../../../engine/physics/index';
import type { DrawnFlight } from './draw';

/** The answer, without a rest on the way. */
export function heardIn(sound: Sound, question: Question): Heard {
  const steps = hear(sound, question);
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

/** What may be off, and isn't called an answer beyond it. */
const TURNS_OFF = 0.005;
const LAP_OFF = 0.02;

export interface Verdict {
  readonly tellsTurns: boolean;
  readonly tellsLap: boolean;
  /** What it says and isn't so, in words. */
  readonly wrong: readonly string[];
  /** Laps that it is sure of: how far each is off, in its own standard errors. */
  readonly offs: readonly number[];
  /** And the speed, where it is told. */
  readonly turnsOff: number | undefined;
  readonly machOff: number | undefined;
}

/** Compares an answer with what is true of a flight, each number by itself. `expected`: rpm that the listener expects. */
export function verdictOn(drawn: DrawnFlight, expected = drawn.about): Verdict {
  const { recording, truth, cycles } = drawn;
  const heard = heardIn({ samples: drawn.sound(), rate: recording.rate }, { about: expected / 60, cycles });
  const wrong: string[] = [];
  const offs: number[] = [];
  let turnsOff: number | undefined;
  const { turns, lap, laps } = heard;
  const last = laps.at(-1);
  if (typeof turns !== 'string') {
    const [from, to] = last ? [laps[0]!.from, last.from + last.time.value] : [0, recording.seconds];
    const off = truth ? (60 * turns.value) / truth.rpm(from, to) - 1 : Number.NaN;
    turnsOff = (off * turns.value) / turns.error;
    if (!(Math.abs(off) <= TURNS_OFF)) wrong.push(`flight ${drawn.seed}: rpm off by ${off}`);
  }
  const trueLap = (from: number): number => {
    const passes = truth?.passes ?? [];
    const k = passes.findIndex((at) => Math.abs(at - from) < 0.5);
    return (passes[k + 1] ?? Number.NaN) - (passes[k] ?? Number.NaN);
  };
  const lapOffs = laps.map(({ from, time }) => time.value - trueLap(from));
  for (const [k, { sure, time }] of laps.entries()) {
    if (!sure) continue;
    offs.push(lapOffs[k]! / time.error);
    if (!(Math.abs(lapOffs[k]!) <= LAP_OFF)) wrong.push(`flight ${drawn.seed}: lap ${k} off by ${lapOffs[k]}`);
  }
  const { mach } = heard;
  const trueMach = (2 * Math.PI * (drawn.flight?.radius ?? 0)) / ((drawn.flight?.lap ?? 0) * recording.sound);
  const machOff = mach && (mach.value - trueMach) / mach.error;
  if (typeof lap !== 'string') {
    const mean = lapOffs.reduce((sum, off) => sum + off, 0) / laps.length;
    if (!(Math.abs(mean) <= LAP_OFF)) wrong.push(`flight ${drawn.seed}: mean lap off by ${mean}`);
  }
  return { tellsTurns: typeof turns !== 'string', tellsLap: typeof lap !== 'string', wrong, offs, turnsOff, machOff };
}
