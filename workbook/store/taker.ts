/** Where a design stands along an axis: SI, or the index of an option. */
export interface Place {
  readonly path: string;
  readonly si: number;
}

/** Takes designs that points of a chart or rows of a table stand for. */
export interface Taker {
  /** What makes such a design: "engine station −160 mm, light ply". */
  title(design: readonly Place[]): string;
  /** Takes it as a variant, called by what makes it. */
  variant(design: readonly Place[]): void;
  /** Sets the design to it. */
  set(design: readonly Place[]): void;
}
