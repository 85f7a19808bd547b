/** A group of named values as a file has it, whatever they turn out to be. */
export type Plain = Readonly<Record<string, unknown>>;

export const isGroup = (value: unknown): value is Plain =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
