import type { Part } from '../../sheet/document';

/** A small thing that the parts of a design don't name and that is often forgotten, with what it would do. */
export interface ForgottenThing {
  /** Ready to be put among the parts. */
  readonly part: Part;
  readonly about: string;
  readonly source: string;
  readonly memory: boolean;
  /** kg; and m from the datum, NaN where the design says nothing about its place. */
  readonly mass: number;
  readonly x: number;
  readonly y: number;
  /** How far it would move the CG, m: aft positive, outboard positive; NaN without a place or without a CG. */
  readonly shiftX: number;
  readonly shiftY: number;
}
