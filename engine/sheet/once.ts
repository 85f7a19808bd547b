/** Computed when it is first asked for, and never again. */
export function once<T extends NonNullable<unknown>>(make: () => T): () => T {
  let made: T | undefined;
  return () => {
    made ??= make();
    return made;
  };
}
