/** What is seen in the air or on the ground. */
export interface Observation {
  readonly key: string;
  readonly seen: string;
  /** Likely cause: common practice, no source. */
  readonly likely: string;
  /** Look at this before anything is changed. */
  readonly first: string;
}

export const OBSERVATIONS: readonly Observation[] = [
  {
    key: 'outboard_low',
    seen: 'Outboard wing low',
    likely: 'too much tip weight',
    first: 'Sight along both wings for a warp.',
  },
  {
    key: 'outboard_high',
    seen: 'Inboard wing low',
    likely: 'too little tip weight',
    first: 'Sight along both wings for a warp.',
  },
  {
    key: 'nose_out',
    seen: 'Nose points far out',
    likely: 'leadouts too far aft, or more rudder than it needs',
    first: 'See that rudder and engine offset are what the plan says.',
  },
  {
    key: 'nose_in',
    seen: 'Nose points in, lines feel light',
    likely: 'leadouts too far forward',
    first: 'Land at once if the lines go slack. See that the leadouts run free in their guide.',
  },
  {
    key: 'hunting',
    seen: 'Hunts up and down',
    likely: 'CG too far aft',
    first: 'Look for slop at the hinges and at the horn, and for a bellcrank that sticks.',
  },
  {
    key: 'slack_overhead',
    seen: 'Lines slack overhead',
    likely: 'too little speed and pull for the length of line',
    first: 'Fly level until the lap time is right: an engine that sags up high does the same.',
  },
  {
    key: 'slack_upwind',
    seen: 'Lines slack upwind',
    likely: 'more wind than this pull can stand',
    first: 'Land, or wait for less wind.',
  },
  {
    key: 'twitchy',
    seen: 'Twitchy',
    likely: 'too much elevator for a turn of the handle',
    first: 'Find the CG with the tank empty: too far aft feels the same.',
  },
  {
    key: 'sluggish',
    seen: 'Slow to answer',
    likely: 'too little elevator for a turn of the handle',
    first: 'Look for stiff hinges, and find the CG: too far forward feels the same.',
  },
  {
    key: 'noses_over',
    seen: 'Noses over at release or landing',
    likely: 'wheels too far aft for this ground',
    first: 'See that the wheels turn free and that the gear is not bent.',
  },
];

/** One number before and after the change, as the page shows it. */
interface TrimFigure {
  readonly title: string;
  readonly before: string;
  readonly after: string;
}

export type TrimAnswer =
  | {
      readonly ok: true;
      /** One change, in words. */
      readonly change: string;
      readonly figures: readonly TrimFigure[];
      /** What the model can’t say of it; '' for nothing. */
      readonly unsaid: string;
    }
  /** Why the model expects nothing here. */
  | { readonly ok: false; readonly message: string };
