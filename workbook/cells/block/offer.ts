import type { BlockDescription } from '../../../engine/index';
import { cellOf, type Offer } from '../shared/new-cell';

/** A block of the model: its form and results come from what it declares. */
export const blockOffer = (block: BlockDescription): Offer => ({
  key: `block ${block.kind}`,
  word: block.title,
  about: firstSentence(block.doc),
  make: (document) => cellOf(document, block.kind, block.title, { kind: 'model', of: block.kind, fields: {} }),
});

const firstSentence = (doc: string): string => /^.*?[.:](?=\s|$)/.exec(doc)?.[0].replace(/:$/, '.') ?? doc;
