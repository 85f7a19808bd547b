/** The tone may be so many times higher or lower than what is expected: less than an octave in all. */
export const FARTHEST_OFF = 1.3;
/** Shorter sounds say nothing, s. */
export const SHORTEST_SOUND = 3;
/** Laps that are looked for, s. */
export const LAPS_HEARD = { shortest: 1.3, longest: 8 } as const;
/** Lines of the spectrum that are summed. */
export const HARMONICS = { fewest: 3, most: 10 } as const;
/** Periods of the tone in a piece, and its ends in s: a shorter one smears less as a model passes, a longer one tells tones apart. */
export const PERIODS = 10;
export const PIECE = { shortest: 0.036, longest: 0.085 } as const;
/** From one piece to the next, s at least, and in lengths of a piece. */
export const HOP = { least: 0.016, share: 0.4 } as const;
/** By how much the pitch swings beyond `FARTHEST_OFF`, and how fast it changes as a fast model passes near by, 1/s. */
export const SWINGS = 1.22;
export const FASTEST_CHANGE = 2;
/** How clearly a tone stands out in the mean, in standard deviations of the scores; noise alone comes to 1. */
export const CLEAR = 1.5;
/** Scatter of the pitches, as a share, below which there is no swing, and beyond which it isn't that of a model on its circle. */
export const STEADY = 0.006;
export const UNSTEADY = 0.009;
/** By so much do the pitches of one lap differ from those of another, as a share: rpm and speed are not the same all around. */
export const LAPS_DIFFER = 0.002;
/** Share of the spread of the pitches that the swing must explain. */
export const EXPLAINED = 0.9;
/** A lap is told whose standard error is less, s; a lap gives the speed whose error is less, as a share of it; a speed is told whose error is less. */
export const LAP_ERROR = 0.006;
export const ROUGH_LAP = 0.01;
export const TURNS_ERROR = 0.0015;
/** What the best sound leaves open of the speed, as a share: from flights made by computation. */
export const LEAST_ERROR = 5e-4;
/** And of the speed over that of sound, as a share of it: a model that is faster on one side bends the swing. From the same flights. */
export const LEAST_MACH_ERROR = 0.04;
/** The mean over whole laps and the swing of these must say the same of the speed, as a share. */
export const AGREE = 0.003;
/** Where the pitch changes faster as the model passes, a piece no longer holds one pitch, 1/s. */
export const TOO_FAST_A_CHANGE = 2.2;
