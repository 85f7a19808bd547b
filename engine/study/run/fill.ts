/** Says what every axis is in one sample: `values[a]` for axis a. */
export type Fill = (sample: number, values: Float64Array) => void;

/** Samples whose axes go together: sample k takes value k of every axis. */
export const fillTogether =
  ({ axes }: { readonly axes: readonly { readonly values: Float64Array }[] }): Fill =>
  (sample, values) => {
    for (let a = 0; a < axes.length; a++) values[a] = axes[a]!.values[sample]!;
  };
