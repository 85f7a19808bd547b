import type { Place } from './expression';

/** One edit of a text: what stands in the place gives way to `text`. */
export interface Repair {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** What is wrong with a formula, and where. */
export interface FormulaFault {
  readonly from: number;
  readonly to: number;
  /** What stands there and why it can't: one sentence. */
  readonly found: string;
  /** What may stand there: one sentence, or '' where `found` says it. */
  readonly allowed: string;
  /** What to do: one sentence. */
  readonly mend: string;
  /** All of it, to be read. */
  readonly message: string;
  /** The edit that mends it, where it's plain what was meant. */
  readonly repair?: Repair;
}

export function fault(place: Place, found: string, allowed: string, mend: string, repair?: Repair): FormulaFault {
  const message = [found, allowed, mend].filter((sentence) => sentence !== '').join(' ');
  return { from: place.from, to: place.to, found, allowed, mend, message, ...(repair ? { repair } : {}) };
}

/** The edit that puts a text in a place. */
export const inPlace = ({ from, to }: Place, text: string): Repair => ({ from, to, text });

/** Thrown inside this folder from a reader or a check and caught at its door; never leaves it. */
export class Refusal extends Error {
  constructor(readonly fault: FormulaFault) {
    super(fault.message);
  }
}

export function refuse(place: Place, found: string, allowed: string, mend: string, repair?: Repair): never {
  throw new Refusal(fault(place, found, allowed, mend, repair));
}

/** Runs a reader or a check, and gives its answer or its fault. */
export function attempt<T extends object>(work: () => T): ({ readonly ok: true } & T) | Refused {
  try {
    return { ok: true, ...work() };
  } catch (refusal) {
    if (refusal instanceof Refusal) return { ok: false, fault: refusal.fault };
    throw refusal;
  }
}

export interface Refused {
  readonly ok: false;
  readonly fault: FormulaFault;
}
