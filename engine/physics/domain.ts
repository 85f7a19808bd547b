/**
 * Guards for arguments of physics functions: each names the value found and the limit, and returns the value. What refuses stands apart: short
 * guards are built into the functions that call them, and then nothing is put on the heap for a number that passes.
 */

const refuse = (name: string, value: number, limit: string): never => {
  throw new RangeError(`${name} is ${value}; it must ${limit}`);
};

export function finite(name: string, value: number): number {
  return Number.isFinite(value) ? value : refuse(name, value, 'be a finite number');
}

/** Refuses 0. */
export function positive(name: string, value: number): number {
  return value > 0 && value < Number.POSITIVE_INFINITY ? value : refuse(name, value, 'be greater than 0');
}

/** Takes 0. */
export function nonNegative(name: string, value: number): number {
  return value >= 0 && value < Number.POSITIVE_INFINITY ? value : refuse(name, value, 'be 0 or greater');
}

/** Both ends allowed. */
export function within(name: string, value: number, low: number, high: number): number {
  return value >= low && value <= high ? value : refuse(name, value, `lie from ${low} to ${high}`);
}
