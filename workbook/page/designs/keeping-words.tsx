import { useDesigns } from '../../store/designs';
import type { FileState } from '../../store/keep/index';

const FILE_WORDS: Readonly<Record<FileState, string>> = {
  untouched: '',
  none: 'saved in this browser only',
  same: 'saved to a file',
  older: 'saved in this browser, changed since it was saved to a file',
};

/** Where the design as it stands is kept. */
export function KeepingWords() {
  const designs = useDesigns();
  if (!designs) return null;
  const keeping = designs.keeping.value;
  let words = FILE_WORDS[designs.file.value];
  if (keeping.kind === 'elsewhere') words = 'open in another tab';
  if (keeping.kind === 'refused' && designs.file.value !== 'same') words = 'not saved: save it to a file';
  // Their room is there before they are: the first change moves nothing.
  if (words === '') {
    return (
      <p class="keeping-words" aria-hidden="true" style={{ visibility: 'hidden' }}>
        {FILE_WORDS.none}
      </p>
    );
  }
  return (
    <p
      class={`keeping-words ${keeping.kind}`}
      data-keeping={keeping.kind}
      data-file={designs.file.value}
      data-stored={designs.atRest.value}
    >
      {words}
    </p>
  );
}
