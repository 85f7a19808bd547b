import './style.css';
import { useEffect, useRef } from 'preact/hooks';
import { HandOn } from './hand-on';
import { TakeIn } from './take-in';

/** A design goes to another machine, or comes from one. */
export function SharingDialog({ what, onClose }: { what: 'to' | 'from'; onClose(): void }) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  const close = (): void => dialog.current?.close();
  return (
    <dialog ref={dialog} class="open-dialog sharing-dialog" aria-labelledby="sharing-title" onClose={onClose}>
      <div class="dialog-head">
        <h2 id="sharing-title">{what === 'to' ? 'Share this design' : 'A design that was handed on'}</h2>
        <button type="button" class="word" onClick={close}>
          Close
        </button>
      </div>
      {what === 'to' ? <HandOn /> : <TakeIn onDone={close} />}
    </dialog>
  );
}
