/** Guards for arguments of physics functions: each names the value found and the limit, and returns the value. */

export function finite(name: string, value: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`${name} is ${value}; it must be a finite number`);
  return value;
}

/** Refuses 0. */
export function positive(name: string, value: number): number {
  if (!(value > 0 && value < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`${name} is ${value}; it must be greater than 0`);
  }
  return value;
}

/** Takes 0. */
export function nonNegative(name: string, value: number): number {
  if (!(value >= 0 && value < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`${name} is ${value}; it must be 0 or greater`);
  }
  return value;
}

/** Both ends allowed. */
export function within(name: string, value: number, low: number, high: number): number {
  if (!(value >= low && value <= high)) {
    throw new RangeError(`${name} is ${value}; it must lie from ${low} to ${high}`);
  }
  return value;
}
