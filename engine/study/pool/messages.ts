import type { Document } from '../../sheet/document';
import type { Plan } from '../kinds/index';
import type { Orderless } from '../run/plan';
import type { Rows } from '../run/runner';

/** What the engine asks of a sampler: plain data. A sampler answers in the order in which it is asked. */
export type ToSampler =
  /** Get ready for the chunks of a run. The document is compiled only where no program of the plan's shape is at hand. */
  | { readonly ask: 'begin'; readonly run: number; readonly document: Document; readonly plan: Orderless<Plan> }
  | { readonly ask: 'rows'; readonly run: number; readonly from: number; readonly samples: Uint32Array }
  | { readonly ask: 'end'; readonly run: number };

export type FromSampler =
  | { readonly tell: 'begun'; readonly run: number }
  | {
      readonly tell: 'rows';
      readonly run: number;
      readonly from: number;
      readonly rows: Rows;
      /** How long the computing took. */
      readonly ms: number;
    }
  /** It can't; the engine does it itself, and says what is wrong if it can't either. */
  | { readonly tell: 'refused'; readonly run: number };
