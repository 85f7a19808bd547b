import type { Chapter } from '../../engine/index';
import { PieceView } from './pieces';
import type { Place } from './places';

interface ChapterProps {
  readonly place: Place;
  readonly before: Chapter | undefined;
  readonly after: Chapter | undefined;
}

/** One chapter: its parts, what it says, and the ways to its neighbours. */
export function ChapterView({ place: { chapter, at, missing }, before, after }: ChapterProps) {
  const parts = chapter.pieces.flatMap((piece) => (piece.kind === 'heading' ? [piece] : []));
  return (
    <article class="chapter" id={chapter.id} aria-labelledby={`title-${chapter.id}`} tabIndex={-1}>
      {missing !== undefined && (
        <p class="missing" role="alert">
          The reference has no place called {missing}. Search for a word of it.
        </p>
      )}
      <h2 id={`title-${chapter.id}`}>{chapter.title}</h2>
      {parts.length > 1 && (
        <nav class="chapter-parts" aria-label="In this chapter">
          {parts.map(({ id, text }) => (
            <a key={id} href={`#${id}`}>
              {text}
            </a>
          ))}
        </nav>
      )}
      {chapter.pieces.map((piece, k) => (
        <PieceView key={k} piece={piece} at={at} />
      ))}
      <nav class="chapter-foot" aria-label="Chapters beside this one">
        {before && <a href={`#${before.id}`}>Before: {before.title}</a>}
        {after && <a href={`#${after.id}`}>Next: {after.title}</a>}
      </nav>
    </article>
  );
}
