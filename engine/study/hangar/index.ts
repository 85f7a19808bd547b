import type { Library } from '../../sheet/specs';
import { apart } from './apart';
import { offersOf } from './offers';
import { takePiece } from './take';
import { tell } from './tell';
import type { HangarService } from './told';

export type { HangarService } from './told';

/** Tells of designs beside the one that is open. */
export const hangarOf = (library: Library): HangarService => ({
  tellDesign: async (text) => tell(text, library),
  tellApart: async (text, other) => apart(text, other, library),
  offers: async (text) => offersOf(text, library),
  take: async (document, text, piece) => takePiece(document, text, piece, library),
});
