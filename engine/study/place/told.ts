import type { Document } from '../../sheet/document';

/** A study as a list of them tells it. */
export interface StudyTold {
  readonly name: string;
  readonly question: string;
  readonly tells: string;
  /** Why it is nothing for the open design; '' where it fits. */
  readonly unfit: string;
}

/** Something that the design could be asked for in more than one way. */
export interface StudyAsk {
  readonly as: string;
  /** "Which choice is the tail stock?" */
  readonly question: string;
  readonly options: readonly { readonly name: string; readonly title: string }[];
  /** Taken while nobody answers. */
  readonly taken: string;
}

/** Something that the design lacks and that can be made in the same step. */
export interface StudyLack {
  readonly as: string;
  readonly sentence: string;
  /** What the press says that makes it; `MAKE` is the answer then. */
  readonly offer: string;
}

/** Answers what a study lacks: it is to be made. */
export const MAKE = '+';

/** What putting a study on the open design would do, and the design with it. */
export type StudyAnswer =
  | {
      readonly ok: true;
      readonly document: Document;
      /** Id of the new sheet. */
      readonly sheet: string;
      readonly asks: readonly StudyAsk[];
      readonly lacks: readonly StudyLack[];
      /** What is added, what becomes a slide, what is left out: a sentence each. */
      readonly says: readonly string[];
    }
  | { readonly ok: false; readonly message: string };
