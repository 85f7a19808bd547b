import { useEffect, useRef } from 'preact/hooks';
import { useSheet } from '../store/context';

/** What can be opened: a file of this machine, or a ready sheet. Undo brings back the one that was open. */
export function ReadySheets({ onFile }: { onFile: () => void }) {
  const sheet = useSheet();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  const close = (): void => {
    sheet.choosing.value = false;
  };
  return (
    <dialog ref={dialog} class="open-dialog" aria-labelledby="open-title" onClose={close}>
      <h2 id="open-title">Open</h2>
      <p>The sheet that is open now comes back with Undo.</p>
      <ul>
        <li>
          <button
            type="button"
            class="word"
            onClick={() => {
              close();
              onFile();
            }}
          >
            A file of this machine
          </button>
        </li>
        {sheet.ready.map((ready) => (
          <li key={ready.file}>
            <button
              type="button"
              class="word"
              onClick={() => {
                close();
                void sheet.openReady(ready);
              }}
            >
              {ready.title}
            </button>
            {ready.about !== '' && <p class="aside">{ready.about}</p>}
          </li>
        ))}
      </ul>
      <button type="button" class="word" onClick={close}>
        Leave it
      </button>
    </dialog>
  );
}
