/** The variants of a design side by side: the baseline where there is one, the design as set, and each variant. */
export interface VariantsTold {
  /** What differences are from. */
  readonly from: 'baseline' | 'design';
  readonly columns: readonly VariantColumn[];
}

export interface VariantColumn {
  readonly what: 'baseline' | 'design' | 'variant';
  /** Of a variant; '' for the others. */
  readonly name: string;
  /** It has been computed. */
  readonly done: boolean;
  /** One for each wanted result, SI; NaN where it has no answer. */
  readonly values: readonly number[];
  /** Why the first of them that has none has no answer; '' where all have one. */
  readonly reason: string;
  /** What is otherwise than in what differences are from. */
  readonly changes: readonly VariantChange[];
  /** Paths that have no place in the design any more: kept and not counted. */
  readonly gone: readonly string[];
  /** What makes the difference; missing while it isn't computed and where there is no difference to share. */
  readonly shares?: VariantShares;
}

export interface VariantChange {
  readonly path: string;
  readonly from: string;
  readonly to: string;
}

/** They add up to the difference, result by result. */
export interface VariantShares {
  /**
   * `orders`: what each change adds, averaged over every order in which they can be made. `alone`: each by itself, and what
   * is left over, which they do together.
   */
  readonly method: 'orders' | 'alone';
  /** each[k][w]: change k, wanted result w; NaN where that change by itself has no answer. */
  readonly each: readonly (readonly number[])[];
  /** Per wanted result; 0 with `orders`. */
  readonly together: readonly number[];
  /** Per wanted result, what was built since the baseline does before any of them. Missing where nothing was. */
  readonly built?: readonly number[];
}
