import { useEffect, useRef } from 'preact/hooks';
import { pageKeys, placeKeys } from './table';

/** Every key of the page with what it does. */
export function KeysDialog({ onClose }: { onClose(): void }) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog ref={dialog} class="open-dialog wide-dialog keys-dialog" aria-labelledby="keys-title" onClose={onClose}>
      <div class="dialog-head">
        <h2 id="keys-title">Keys</h2>
        <button type="button" class="word" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </div>
      <h3>Everywhere</h3>
      <KeyList of={pageKeys.map(({ words, does }) => [words, does])} />
      <h3>Where the focus is</h3>
      <KeyList of={placeKeys} />
      <p class="aside">On a Mac: Option for Alt, Command for Control; function keys may need Fn.</p>
    </dialog>
  );
}

function KeyList({ of }: { of: readonly (readonly [words: string, does: string])[] }) {
  return (
    <dl class="keys">
      {of.map(([words, does]) => (
        <div key={words}>
          <dt>{words}</dt>
          <dd>{does}</dd>
        </div>
      ))}
    </dl>
  );
}
