import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { useSheet } from '../../store/context';
import { type Designs, useDesigns } from '../../store/designs';
import { THINNING, TOLD, type Version } from '../../store/keep/index';
import { momentWords } from '../../store/moment-words';

/** The versions of the open design: when, what was changed, and what can be done with each. */
export function Versions({ onClose }: { onClose: () => void }) {
  const sheet = useSheet();
  const designs = useDesigns();
  const dialog = useRef<HTMLDialogElement>(null);
  const wayBack = useSignal<(() => Promise<void>) | undefined>(undefined);
  useEffect(() => {
    dialog.current?.showModal();
    void designs?.readVersions();
  }, [designs]);
  const versions = designs?.versions.value;
  const keeping = designs?.keeping.value;
  const leave = (): void => dialog.current?.close();
  return (
    <dialog ref={dialog} class="open-dialog wide-dialog" aria-labelledby="versions-title" onClose={onClose}>
      <div class="dialog-head">
        <h2 id="versions-title">Versions of {sheet.part('title') || 'this design'}</h2>
        <button type="button" class="word" onClick={leave}>
          Close
        </button>
      </div>
      {keeping?.kind === 'refused' && <p class="form-problem">{keeping.sentence}</p>}
      {versions?.length === 0 && keeping?.kind !== 'refused' && (
        <p>
          There is none yet. The first is kept here by itself as soon as something is changed; the design that is open
          now is kept with it.
        </p>
      )}
      {wayBack.value && (
        <p class="way-back" role="status">
          The version is removed.{' '}
          <button
            type="button"
            class="word"
            onClick={() => {
              void wayBack.value?.();
              wayBack.value = undefined;
            }}
          >
            Bring it back
          </button>
        </p>
      )}
      <ol class="versions">
        {versions?.map((version, k) => (
          <VersionRow
            key={version.id}
            version={version}
            newest={k === 0}
            onLeave={leave}
            onDelete={async () => {
              wayBack.value = await designs?.deleteVersion(version);
            }}
          />
        ))}
      </ol>
      <p class="aside">{THINNING}</p>
    </dialog>
  );
}

interface RowProps {
  readonly version: Version;
  readonly newest: boolean;
  readonly onLeave: () => void;
  readonly onDelete: () => Promise<void>;
}

function VersionRow({ version, newest, onLeave, onDelete }: RowProps) {
  const designs = useDesigns();
  const naming = useSignal(false);
  if (!designs) return null;
  const when = momentWords(version.at, Date.now());
  const then = (act: (designs: Designs) => void) => () => {
    onLeave();
    act(designs);
  };
  return (
    <li data-version={version.id}>
      <p>
        <strong>{version.name ?? when}</strong>
        {version.name !== undefined && ` ${when}`}
        {newest && ' (as it is now)'}
      </p>
      <p class="aside">{changesWords(version)}</p>
      <p class="commands">
        <button type="button" class="word" onClick={then((to) => to.look(version))}>
          Look at it<span class="unseen">, {when}</span>
        </button>
        <button type="button" class="word" onClick={then((to) => to.returnTo(version))}>
          Return to it<span class="unseen">, {when}</span>
        </button>
        <button type="button" class="word" aria-expanded={naming.value} onClick={() => (naming.value = !naming.value)}>
          {version.name === undefined ? 'Name it' : 'Change its name'}
          <span class="unseen">, {when}</span>
        </button>
        <button type="button" class="word" onClick={() => void onDelete()}>
          Remove<span class="unseen"> the version of {when}</span>
        </button>
      </p>
      {naming.value && (
        <form
          onSubmit={(event) => {
            event.preventDefault();
            naming.value = false;
            void designs.nameVersion(version, String(new FormData(event.currentTarget).get('name') ?? ''));
          }}
        >
          <label>
            Name. A version with a name stays until you remove it; without one it goes with the others.{' '}
            <input class="text-entry" name="name" autocomplete="off" maxLength={80} value={version.name ?? ''} />
          </label>
          <button type="submit" class="word">
            Take this name
          </button>
        </form>
      )}
    </li>
  );
}

function changesWords({ edits, says }: Version): string {
  if (edits === 0) return says.join(', ');
  const count = edits === 1 ? '1 change' : `${edits} changes`;
  return `${count}: ${says.length === TOLD ? '… ' : ''}${says.join(', ')}`;
}
