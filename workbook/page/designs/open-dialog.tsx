import { useEffect, useRef } from 'preact/hooks';
import { useSheet } from '../../store/context';
import { useDesigns } from '../../store/designs';
import { DesignsHere } from './designs-here';

/** What can be opened: a file of this machine, a design that is kept in this browser, or the demo. Undo brings back the one that was open. */
export function OpenDialog({ onFile }: { onFile: () => void }) {
  const sheet = useSheet();
  const designs = useDesigns();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  const close = (): void => dialog.current?.close();
  return (
    <dialog
      ref={dialog}
      class="open-dialog wide-dialog"
      aria-labelledby="open-title"
      onClose={() => {
        sheet.choosing.value = false;
      }}
    >
      <div class="dialog-head">
        <h2 id="open-title">Open</h2>
        <button type="button" class="word" onClick={close}>
          Close
        </button>
      </div>
      <p>What is open now stays among the designs on this machine, and comes back with Undo too.</p>
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
          <p class="aside">You can also drop it onto the page.</p>
        </li>
        <li>
          <button
            type="button"
            class="word"
            onClick={() => {
              close();
              if (designs) designs.beginning.value = true;
            }}
          >
            Begin with my model
          </button>
        </li>
        <li>
          <button
            type="button"
            class="word"
            onClick={() => {
              close();
              designs?.emptySheet();
            }}
          >
            An empty design
          </button>
        </li>
        <li>
          <button
            type="button"
            class="word"
            onClick={() => {
              close();
              void sheet.openDemo();
            }}
          >
            The demo: Quern 25
          </button>
          <p class="aside">An invented club racer of 1.0 m span with every study on it, as it came.</p>
        </li>
      </ul>
      <DesignsHere onLeave={close} />
    </dialog>
  );
}
