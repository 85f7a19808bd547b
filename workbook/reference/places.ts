import type { Chapter, Piece } from '../../engine/index';

/** Where an address leads: a chapter, and the place in it. */
export interface Place {
  readonly chapter: Chapter;
  /** Id of what is gone to; missing: the beginning of the chapter. */
  readonly at?: string;
  /** What was asked for and isn't there. */
  readonly missing?: string;
}

export const idOf = (piece: Piece): string | undefined =>
  piece.kind === 'heading' || piece.kind === 'entry' ? piece.id : undefined;

/** Finds the place of an address such as "#field.wing.span"; without one the first chapter. */
export function placesOf(chapters: readonly Chapter[]): (hash: string) => Place {
  const places = new Map<string, Place>();
  for (const chapter of chapters) {
    places.set(chapter.id, { chapter });
    for (const piece of chapter.pieces) {
      const id = idOf(piece);
      if (id !== undefined) places.set(id, { chapter, at: id });
    }
  }
  return (hash) => {
    const id = decoded(hash.replace(/^#/, ''));
    const found = places.get(id);
    if (found) return found;
    const first = { chapter: chapters[0]! };
    return id === '' ? first : { ...first, missing: id };
  };
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
