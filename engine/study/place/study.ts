import * as v from 'valibot';

/**
 * A question with its pieces, written against roles and quantities and not against the names of one design. In every text of a
 * piece `@name` stands for what the design calls it: a role of the model (`@flight.pull`), the weights (`@parts`), a slide, a
 * pick, the propeller’s `@pitch` and `@diameter`, or a piece of the study; `@@name` stands for its title in the middle of a sentence,
 * `@@drive` for engine or motor, in the question too.
 */
export interface Study {
  readonly name: string;
  /** As a builder would ask it. */
  readonly question: string;
  /** What the sheet then shows. */
  readonly tells: string;
  /** Roles of the model that its pieces read; those that are missing are added. */
  readonly needs: readonly string[];
  /** Of these, roles that the study is about: a piece that is added for one stands open. */
  readonly open: readonly string[];
  /** It asks about fuel: nothing for a design that carries none. */
  readonly fuel: boolean;
  /** Of these, roles of which a model that carries no fuel has no use: what reads them is left out. */
  readonly fuelled: readonly string[];
  /** Role → fields of a piece that is added, where its own estimates don't suit the question. */
  readonly fields: Readonly<Record<string, Readonly<Record<string, string>>>>;
  readonly slides: readonly Slide[];
  readonly picks: readonly Pick[];
  readonly remarks: readonly Remark[];
  readonly pieces: readonly Template[];
}

/** A number of the model that must slide. */
export interface Slide {
  readonly as: string;
  /** `role.field`. */
  readonly of: string;
  readonly title: string;
  readonly symbol: string;
  /** How far it slides to either side: a share of its value, or a quantity where that is more. */
  readonly share: number;
  readonly least: string;
  /** `role.result` that says what it is while its field is blank; '' = the result of the same name. */
  readonly blank: string;
  /** `role.field` beside which it says nothing: no slide is made while something is typed there; '' = none. */
  readonly unless: string;
  /** Ends that it may not pass, as texts; '' = those of its field. */
  readonly low: string;
  readonly high: string;
}

/** What the study says beside its first note, in the preview too, where a piece of some kind stands for a role. */
interface Remark {
  readonly role: string;
  /** Kinds of that piece. */
  readonly of: readonly string[];
  readonly says: string;
}

/** A choice of the design that the study compares by. */
export interface Pick {
  readonly as: string;
  /** "the tail stock". */
  readonly what: string;
  /** `stack`: a choice that parts are made of, the one farthest aft first; `any`: every choice. */
  readonly of: 'stack' | 'any';
}

/** A piece of the study: as in a file, without an id. What names a slide or pick that the design lacks is left out. */
export type Template = Readonly<Record<string, unknown>> & { readonly kind: string; readonly name: string };

const text = v.string();
const slide = v.strictObject({
  as: text,
  of: text,
  title: text,
  symbol: text,
  share: v.optional(v.number(), 0.25),
  least: v.optional(text, ''),
  blank: v.optional(text, ''),
  unless: v.optional(text, ''),
  low: v.optional(text, ''),
  high: v.optional(text, ''),
});

export const studySchema = v.strictObject({
  name: v.pipe(text, v.regex(/^[a-z][a-z0-9_]*$/)),
  question: text,
  tells: text,
  needs: v.array(text),
  open: v.optional(v.array(text), []),
  fuel: v.optional(v.boolean(), false),
  fuelled: v.optional(v.array(text), []),
  fields: v.optional(v.record(text, v.record(text, text)), {}),
  slides: v.array(slide),
  picks: v.array(v.strictObject({ as: text, what: text, of: v.picklist(['stack', 'any']) })),
  remarks: v.optional(v.array(v.strictObject({ role: text, of: v.array(text), says: text })), []),
  pieces: v.array(v.looseObject({ kind: text, name: text })),
}) satisfies v.GenericSchema<unknown, Study>;
