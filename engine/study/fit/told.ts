import type { FitCell } from '../../sheet/document';

/** One number of the design that a fit has found, SI. */
export interface FittedFactor {
  readonly path: string;
  /** As typed now. */
  readonly before: number;
  readonly value: number;
  /** Standard error; NaN where it isn't determined or stands at an end. */
  readonly error: number;
  /** The log gives it one value. */
  readonly determined: boolean;
  /** It stands at this end of its range and would go on beyond it. */
  readonly end?: 'low' | 'high';
}

/** One measured number against what the model says of that flight, SI. */
export interface FittedNumber {
  /** Row of the log, from 0. */
  readonly row: number;
  readonly path: string;
  readonly measured: number;
  /** Measuring error as stated, of one lap for a time. */
  readonly error: number;
  /** With the design as it stands, and with the factors found. */
  readonly before: number;
  readonly fitted: number;
}

export interface FitAnswer {
  readonly revision: number;
  /** Name of the fit cell. */
  readonly fit: string;
  /** `stopped`: the design was edited meanwhile. */
  readonly state: 'settled' | 'fault' | 'stopped';
  /** Why there is no fit, where state is fault. */
  readonly message?: string;
  readonly factors: readonly FittedFactor[];
  /** Correlation of factor a with factor b; NaN where either isn't determined. */
  readonly correlation: readonly (readonly number[])[];
  readonly numbers: readonly FittedNumber[];
  /** Measured numbers less the factors that they tell apart. */
  readonly freedom: number;
  /** Root mean square of the residuals in measuring errors, over the freedom; NaN without any. */
  readonly scatter: number;
  /** The same of the design as it stands. */
  readonly scatterBefore: number;
  /** What the standard errors rest on. */
  readonly errors: FitCell['errors'];
  readonly iterations: number;
  /** Every factor has a value of its own that may be taken. */
  readonly takeable: boolean;
  /** What else is to be known of it: what isn't determined, what was left out. */
  readonly sentences: readonly string[];
}

/** What was measured on flights beside what the design as it stands would have done, SI. */
export interface FlownAnswer {
  readonly revision: number;
  /** Name of the log. */
  readonly log: string;
  readonly state: 'settled' | 'fault' | 'stopped';
  readonly message?: string;
  readonly numbers: readonly {
    /** Row of the log, from 0. */
    readonly row: number;
    readonly path: string;
    readonly value: number;
    readonly error: number;
    readonly predicted: number;
  }[];
  /** Rows that have something measured and nothing predicted. */
  readonly leftOut: readonly { readonly row: number; readonly why: string }[];
}
