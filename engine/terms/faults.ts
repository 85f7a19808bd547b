import type { Repair } from '../formula/index';

/** Something wrong, at a place, as sentences for people. */
export interface Fault {
  /** Cell id, and the path whose text is at fault or whose step has no answer. */
  readonly cell: string;
  readonly path: string;
  /** Character range in the text at `path`, where the fault lies in a text. */
  readonly from?: number;
  readonly to?: number;
  /** The edit of the text at `path` that mends it, where it's plain what was meant. */
  readonly repair?: Repair;
  /** `fault`: wrong text or no answer; `waits`: an input is missing or at fault (then `waitsFor` names it). */
  readonly state: 'fault' | 'waits';
  readonly waitsFor?: string;
  /** What a person calls that, as it stands in the message. */
  readonly waitsTitle?: string;
  /** One or more sentences: what was found, what is allowed, how to mend it. */
  readonly message: string;
}
