/** One size of a first design, worked out in the sheet itself from what a person knows of the model. Common practice, no source. */
export interface Rule {
  readonly name: string;
  readonly text: string;
  readonly unit: string;
  /** The rule in words. */
  readonly says: string;
}
