import type { ReadonlySignal } from '@preact/signals';
import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import type { Chapter } from '../../engine/index';
import type { Room } from '../page/room';
import { type Found, searchOf } from './search';

const groups = [
  'Reading this',
  'Pieces of the model',
  'Formulas',
  'Data',
] as const satisfies readonly Chapter['group'][];
/** What each part of the contents is called on the page. */
const groupWords: Readonly<Record<Chapter['group'], string>> = {
  'Reading this': 'Reading this',
  'Pieces of the model': 'Pieces of the model',
  Formulas: 'Formulas and units',
  Data: 'Data',
};

interface ContentsProps {
  readonly chapters: readonly Chapter[];
  /** Id of the chapter that is open. */
  readonly open: string;
  readonly room: ReadonlySignal<Room>;
}

/** The way to every chapter: by its title, or by words of what is looked for. */
export function Contents({ chapters, open, room }: ContentsProps) {
  const words = useSignal('');
  // Made when somebody begins to search.
  const search = useMemo(() => {
    let look: ReturnType<typeof searchOf> | undefined;
    return (text: string) => {
      look ??= searchOf(chapters);
      return look(text);
    };
  }, [chapters]);
  const asked = words.value.trim();
  const found = asked === '' ? undefined : search(asked);
  return (
    <div class="contents">
      <search>
        <label class="reference-search">
          <span>Search</span>
          <input
            type="search"
            value={words.value}
            autocomplete="off"
            spellcheck={false}
            placeholder="static margin"
            onInput={(event) => {
              words.value = event.currentTarget.value;
            }}
            onKeyDown={(event) => {
              if (event.key === 'Escape') words.value = '';
              if (event.key === 'Enter' && found?.[0]) location.hash = found[0].id;
            }}
          />
        </label>
        <p class="aside" role="status">
          {found && countWords(found.length)}
        </p>
        {found && <FoundList found={found} />}
      </search>
      <nav class="contents-list" aria-label="Contents" hidden={found !== undefined && found.length > 0}>
        {/* On a phone the list is closed again by each new chapter. */}
        <details key={room.value === 'phone' ? open : ''} open={room.value !== 'phone'}>
          <summary>Chapters</summary>
          {groups.map((group) => (
            <section key={group} aria-label={groupWords[group]}>
              <h2>{groupWords[group]}</h2>
              <ul>
                {chapters
                  .filter((chapter) => chapter.group === group)
                  .map(({ id, title }) => (
                    <li key={id}>
                      <a href={`#${id}`} aria-current={id === open ? 'page' : undefined}>
                        {title}
                      </a>
                    </li>
                  ))}
              </ul>
            </section>
          ))}
        </details>
      </nav>
    </div>
  );
}

function FoundList({ found }: { found: readonly Found[] }) {
  return (
    <ol class="found">
      {found.map(({ id, title, chapter, says }, k) => (
        <li key={k}>
          <a href={`#${id}`}>
            <strong>{title}</strong>
            {chapter !== title && <span class="aside"> {chapter}</span>}
            {says !== '' && <span class="found-says">{says}</span>}
          </a>
        </li>
      ))}
    </ol>
  );
}

function countWords(count: number): string {
  if (count === 0) return 'Nothing has all of these words. Try fewer, or the beginning of one.';
  return count === 1 ? '1 place' : `${count} places`;
}
