import type { ReadonlySignal, Signal } from '@preact/signals';
import { useLayoutEffect } from 'preact/hooks';
import type { Chapter } from '../../engine/index';
import type { Paper } from '../page/paper';
import { PaperChoice } from '../page/paper-choice';
import type { Room } from '../page/room';
import { Zones } from '../page/zones';
import type { Going } from './address';
import { ChapterView } from './chapter-view';
import { Contents } from './contents';
import { chapterRule } from './page-rule';
import { WayBack } from './way-back';

interface ReferenceProps {
  readonly chapters: readonly Chapter[];
  readonly going: ReadonlySignal<Going>;
  readonly paper: Signal<Paper>;
  readonly room: ReadonlySignal<Room>;
}

/** The reference as a sheet of its own: search and contents at the left, one chapter, a title block at the foot. */
export function ReferencePage({ chapters, going, paper, room }: ReferenceProps) {
  const { place, y, first } = going.value;
  const { chapter } = place;
  const k = chapters.indexOf(chapter);
  useLayoutEffect(() => {
    window.document.title = `${chapter.title} – Reference – Tetherwright`;
    const element = window.document.getElementById(place.at ?? chapter.id);
    if (!first) element?.focus({ preventScroll: true });
    if (y !== undefined) window.scrollTo({ top: y });
    else if (place.at !== undefined) element?.scrollIntoView({ block: 'start' });
    else if (!first) element?.scrollIntoView({ block: 'start' });
  }, [going.value]);
  return (
    <>
      <a class="skip" href={`#${chapter.id}`}>
        Go to the text
      </a>
      <div class="sheet">
        <Zones />
        <div class="frame">
          <header class="top-bar">
            <h1>Reference</h1>
            <nav aria-label="Ways">
              <WayBack />
              <button type="button" class="word" onClick={() => window.print()}>
                Print this chapter
              </button>
            </nav>
            <PaperChoice paper={paper} />
          </header>
          <div class="reference">
            <Contents chapters={chapters} open={chapter.id} room={room} />
            <main id="chapters">
              <ChapterView key={chapter.id} place={place} before={chapters[k - 1]} after={chapters[k + 1]} />
            </main>
          </div>
          <footer class="title-block">
            <div class="title-field title-title">
              <span class="title-label">title</span>
              <span class="title-plain">Reference: {chapter.title}</span>
            </div>
            <div class="title-field">
              <span class="title-label">chapter</span>
              <span class="title-plain">
                {k + 1} of {chapters.length}
              </span>
            </div>
          </footer>
          <style>{chapterRule(chapter.title)}</style>
        </div>
      </div>
    </>
  );
}
