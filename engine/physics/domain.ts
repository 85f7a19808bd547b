/**
 * Guards for arguments of physics functions: each names the value found and the limit, and returns the value. What refuses stands apart, and a
 * guard takes no more than a few steps: so it is built into the functions that call it, and nothing is put on the heap for a number that passes.
 */

function refuse(name: string, value: number, limit: string): never {
  throw new RangeError(`${name} is ${value}; it must ${limit}`);
}

function refusePositive(name: string, value: number): never {
  return refuse(name, value, 'be greater than 0');
}

function refuseNonNegative(name: string, value: number): never {
  return refuse(name, value, 'be 0 or greater');
}

export function finite(name: string, value: number): number {
  return Number.isFinite(value) ? value : refuse(name, value, 'be a finite number');
}

/** Refuses 0. The number is the greatest there is: written out, since looking it up would make the guard too long to be built in. */
export function positive(name: string, value: number): number {
  return value > 0 && value <= 1.7976931348623157e308 ? value : refusePositive(name, value);
}

/** Takes 0. */
export function nonNegative(name: string, value: number): number {
  return value >= 0 && value <= 1.7976931348623157e308 ? value : refuseNonNegative(name, value);
}

/** Both ends allowed. */
export function within(name: string, value: number, low: number, high: number): number {
  return value >= low && value <= high ? value : refuse(name, value, `lie from ${low} to ${high}`);
}
