import type { RestMass } from '../../physics/index';

/** `weighed`; `remade`: weighed when it was made of something else; `open`: not on the scale yet. */
export type PartWeighing = 'weighed' | 'remade' | 'open';

/** A part on the bench, SI. */
export interface WeighedPart {
  /** `parts.fin`. */
  readonly path: string;
  readonly state: PartWeighing;
  /** That counts. */
  readonly mass: number;
  readonly estimate: number;
  readonly x: number;
  /** Standard deviation of the CG station once it has been on the scale; NaN where it has been. */
  readonly band: number;
  /** Share of the band that goes with it, by variance; less than nothing where its error made up for another's. NaN where it has been. */
  readonly share: number;
  /** What it may weigh so that the CG lies where it is wanted, all else as it counts; NaN where nothing is wanted or it can't bring it about. */
  readonly mayWeigh: number;
}

/** Where the CG of the finished model was told to lie after a part had been on the scale. */
export interface CgStep {
  /** '' before any. */
  readonly path: string;
  readonly x: number;
  /** One standard deviation. */
  readonly band: number;
}

/** All that the bench tells; SI. */
export interface WeighingAnswer {
  readonly revision: number;
  /** Name of the piece. */
  readonly weighing: string;
  readonly state: 'settled' | 'fault' | 'stopped';
  readonly message?: string;
  /** In the order of the table, without fuel. */
  readonly parts: readonly WeighedPart[];
  /** Path of the part that takes the largest share of the band with it; '' where none is left to be weighed. */
  readonly next: string;
  readonly history: readonly CgStep[];
  /** Share of the mass without fuel that has been on the scale. */
  readonly done: number;
  /** What has been on the scale, by itself: NaN while that is nothing. */
  readonly weighed: { readonly mass: number; readonly x: number; readonly y: number };
  /** The finished model with the fuel that the table says. */
  readonly finished: { readonly mass: number; readonly x: number; readonly band: number };
  /** NaN where nothing is wanted. */
  readonly wanted: number;
  readonly within: number;
  /** What is not weighed yet, together: its estimate, and what it may weigh; missing where nothing is wanted or nothing is left. */
  readonly rest?: { readonly mass: number; readonly may: RestMass };
}
