/** Where a solve stands: V (m/s), sideslip β, roll δ, pitch θ (rad). */
export interface State {
  speed: number;
  sideslip: number;
  roll: number;
  pitch: number;
}

// Not a number until it is set: a 0 would be kept as a small integer, and the first fraction would change the record's form.
export const newState = (): State => ({
  speed: Number.NaN,
  sideslip: Number.NaN,
  roll: Number.NaN,
  pitch: Number.NaN,
});
