import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

/** One of the places that can be chosen. */
export interface Place {
  readonly key: string;
  readonly words: string;
  readonly aside?: string;
  readonly disabled?: boolean;
  choose(): void;
}

/** A list of places, one of which is chosen by a press; it closes by itself then. `children` stands where there is none. */
export function ChoiceDialog({
  title,
  places,
  onClose,
  children,
}: {
  title: string;
  places: readonly Place[];
  onClose(): void;
  children?: ComponentChildren;
}) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    dialog.current?.showModal();
    dialog.current?.querySelector<HTMLElement>('ol button:not(:disabled)')?.focus();
  }, []);
  return (
    <dialog ref={dialog} class="open-dialog choice-dialog" aria-label={title} onClose={onClose}>
      <div class="dialog-head">
        <h2>{title}</h2>
        <button type="button" class="word" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </div>
      {places.length === 0 && children}
      <ol>
        {places.map(({ key, words, aside, disabled, choose }) => (
          <li key={key}>
            <button
              type="button"
              class="word"
              disabled={disabled}
              onClick={() => {
                dialog.current?.close();
                choose();
              }}
            >
              {words}
            </button>
            {aside !== undefined && <span class="aside">{aside}</span>}
          </li>
        ))}
      </ol>
    </dialog>
  );
}
