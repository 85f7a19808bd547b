import * as v from 'valibot';
import { unitSpellings } from '../../units/index';

/** What a piece or a sheet is known by, whatever it is called. */
export const idEntry = v.pipe(v.string(), v.minLength(1));

/** A unit of the table by any of its spellings; '' for a plain number. */
export const unitEntry = v.picklist(['', ...unitSpellings]);

/** What every cell has, in the order in which a file lists it. */
export const baseEntries = <K extends string>(kind: K) => ({
  kind: v.literal(kind),
  id: idEntry,
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
