/** Where a solve stands: V (m/s), sideslip β, roll δ, pitch θ (rad). */
export interface State {
  speed: number;
  sideslip: number;
  roll: number;
  pitch: number;
}

/**
 * Not a number until it is set: a 0 would be kept as a small integer, and the first fraction would change the record's form. A class
 * of its own shares its form with no other record that begins with a speed, so that its numbers are changed in place.
 */
class Room implements State {
  speed = Number.NaN;
  sideslip = Number.NaN;
  roll = Number.NaN;
  pitch = Number.NaN;
}

export const newState = (): State => new Room();
