import type { Document } from '../../sheet/document';

/** What a person says of a model that isn't drawn yet: texts as typed, '' where nothing is said. */
export interface FirstDesignForm {
  readonly title: string;
  readonly drive: 'engine' | 'motor';
  readonly span: string;
  readonly chord: string;
  /** Displacement of the engine, or electric power of the motor. */
  readonly size: string;
  /** Diameter and pitch as marked: 9x6. */
  readonly propeller: string;
  readonly line_length: string;
  readonly line_diameter: string;
  readonly line_count: string;
  /** Ready to fly, tank empty. */
  readonly weight: string;
  readonly lap_time: string;
  readonly tail_stock: TailStock;
}

/** What stabiliser and elevator are cut from. */
export type TailStock = 'balsa' | 'balsa_ply' | 'light_ply';

export type FormField =
  | 'span'
  | 'chord'
  | 'displacement'
  | 'motor_power'
  | 'propeller'
  | 'line_length'
  | 'line_diameter'
  | 'line_count'
  | 'weight'
  | 'lap_time';

export interface FormProblem {
  readonly field: FormField;
  /** Where, what was found, what is allowed, how to mend it. */
  readonly message: string;
}

export type FirstDesignAnswer =
  | { readonly ok: true; readonly document: Document }
  /** Nothing was made; each entry that is at fault with its sentence. */
  | { readonly ok: false; readonly problems: readonly FormProblem[] };
