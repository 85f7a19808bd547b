import type { Signal } from '@preact/signals';
import type { Chapter } from '../../engine/index';
import type { Paper } from '../page/paper';
import { PaperChoice } from '../page/paper-choice';
import { Zones } from '../page/zones';
import { PieceView } from './pieces';

const groups = ['Reading this', 'Blocks', 'Formulas', 'Data'] as const satisfies readonly Chapter['group'][];

/** The reference as a sheet of its own: contents at the left, chapters in one column, a title block at the foot. */
export function ReferencePage({ chapters, paper }: { chapters: readonly Chapter[]; paper: Signal<Paper> }) {
  return (
    <>
      <a class="skip" href="#chapters">
        Go to the text
      </a>
      <div class="sheet">
        <Zones />
        <div class="frame">
          <header class="top-bar">
            <h1>Reference</h1>
            <nav aria-label="Sheet">
              <a class="word" href="./">
                To the sheet
              </a>
            </nav>
            <PaperChoice paper={paper} />
          </header>
          <div class="reference">
            <Contents chapters={chapters} />
            <main id="chapters" tabIndex={-1}>
              {chapters.map((chapter) => (
                <ChapterView key={chapter.id} chapter={chapter} />
              ))}
            </main>
          </div>
          <footer class="title-block">
            <div class="title-field title-title">
              <span class="title-label">title</span>
              <span class="title-plain">Reference: fields, results, equations, units, materials</span>
            </div>
            <div class="title-field">
              <span class="title-label">made from</span>
              <span class="title-plain">what the engine declares</span>
            </div>
          </footer>
        </div>
      </div>
    </>
  );
}

function Contents({ chapters }: { chapters: readonly Chapter[] }) {
  return (
    <nav class="contents" aria-label="Contents">
      {groups.map((group) => (
        <section key={group} aria-label={group}>
          <h2>{group}</h2>
          <ul>
            {chapters
              .filter((chapter) => chapter.group === group)
              .map((chapter) => (
                <li key={chapter.id}>
                  <a href={`#${chapter.id}`}>{chapter.title}</a>
                </li>
              ))}
          </ul>
        </section>
      ))}
    </nav>
  );
}

function ChapterView({ chapter }: { chapter: Chapter }) {
  return (
    <article class="chapter" id={chapter.id} aria-labelledby={`title-${chapter.id}`} tabIndex={-1}>
      <h2 id={`title-${chapter.id}`}>{chapter.title}</h2>
      {chapter.pieces.map((piece, k) => (
        <PieceView key={k} piece={piece} />
      ))}
    </article>
  );
}
