import { type Signal, useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { Tick } from '../../cells/index';
import { DELETED_WORDS, type Designs, useDesigns } from '../../store/designs';
import type { Design } from '../../store/keep/index';
import { momentWords } from '../../store/moment-words';
import { Together } from './together';
import { ApartWords, PictureOf, ToldOf } from './told-of';

/** Designs on this machine, each to be opened, copied or deleted with a way back. */
export function DesignsHere({ onLeave }: { onLeave: () => void }) {
  const designs = useDesigns();
  useEffect(() => void designs?.readList(), [designs]);
  const ticked = useSignal<ReadonlySet<string>>(NONE);
  const list = designs?.list.value;
  if (!designs || !list) return null;
  const keeping = designs.keeping.value;
  const kept = list.filter((design) => design.deleted === undefined);
  const deleted = list.filter((design) => design.deleted !== undefined);
  return (
    <section aria-labelledby="designs-title">
      <h3 id="designs-title">Designs on this machine</h3>
      {keeping.kind === 'refused' && <p class="form-problem">{keeping.sentence}</p>}
      {kept.length === 0 && keeping.kind !== 'refused' && (
        <p>
          None is kept yet. What you change is kept in this browser by itself; to have it elsewhere, or to be sure of
          it, save it to a file.
        </p>
      )}
      <ul class="designs-kept">
        {kept.map((design) => (
          <KeptDesign key={design.id} design={design} designs={designs} ticked={ticked} onLeave={onLeave} />
        ))}
      </ul>
      {kept.length > 1 && <Together kept={kept} ticked={ticked} designs={designs} />}
      {deleted.length > 0 && (
        <ul class="deleted">
          {deleted.map((design) => (
            <li key={design.id} data-design={design.id}>
              <p>{titleOf(design)}</p>
              <p class="aside">{DELETED_WORDS}</p>
              <p class="commands">
                <button type="button" class="word" onClick={() => void designs.bringBack(design)}>
                  Bring back<span class="unseen"> {titleOf(design)}</span>
                </button>
                <button type="button" class="word" onClick={() => void designs.removeDesign(design)}>
                  Delete for good<span class="unseen">: {titleOf(design)}</span>
                </button>
              </p>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

const NONE: ReadonlySet<string> = new Set();
const titleOf = (design: Design): string => design.title || 'Untitled design';

interface Props {
  readonly design: Design;
  readonly designs: Designs;
  readonly ticked: Signal<ReadonlySet<string>>;
  readonly onLeave: () => void;
}

function KeptDesign({ design, designs, ticked, onLeave }: Props) {
  const isOpen = design.id === designs.open.value;
  const title = titleOf(design);
  const named = <span class="unseen"> {title}</span>;
  return (
    <li data-design={design.id}>
      <PictureOf design={design} designs={designs} />
      <Tick
        on={ticked.value.has(design.id)}
        onChange={(on) => {
          const others = [...ticked.value].filter((id) => id !== design.id);
          ticked.value = new Set(on ? [...others, design.id] : others);
        }}
      >
        <strong>{title}</strong>
      </Tick>
      <ToldOf design={design} designs={designs} />
      <p class="aside">
        {isOpen ? 'Open now' : 'Kept'}, changed {momentWords(design.changed, Date.now())}
      </p>
      <ApartWords design={design} designs={designs} />
      <p class="commands">
        {!isOpen && (
          <button
            type="button"
            class="word"
            onClick={() => {
              onLeave();
              designs.openDesign(design);
            }}
          >
            Open{named}
          </button>
        )}
        <button
          type="button"
          class="word"
          onClick={() => {
            onLeave();
            designs.copyDesign(design);
          }}
        >
          Copy{named}
        </button>
        {!isOpen && (
          <button
            type="button"
            class="word"
            onClick={() => {
              onLeave();
              designs.takingFrom.value = design;
            }}
          >
            Take from it<span class="unseen">: {title}</span>
          </button>
        )}
        {!isOpen && (
          <button type="button" class="word" onClick={() => void designs.deleteDesign(design)}>
            Delete{named}
          </button>
        )}
      </p>
    </li>
  );
}
