import * as v from 'valibot';

/** What every cell has, in the order in which a file lists it. */
export const baseEntries = <K extends string>(kind: K) => ({
  kind: v.literal(kind),
  id: v.pipe(v.string(), v.minLength(1)),
  name: v.string(),
  title: v.string(),
  folded: v.optional(v.boolean()),
});

/** Name → text. A list is refused first: it would pass for a record whose names are numbers. */
export const textsEntry = v.pipe(
  v.unknown(),
  v.check((texts) => !Array.isArray(texts)),
  v.record(v.string(), v.string()),
);
