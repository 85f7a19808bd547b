import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

interface RowRoomProps {
  /** What is changed here. */
  readonly title: string;
  onClose(): void;
  readonly children: ComponentChildren;
}

/** Everything that can be said of one row, opened under it; its first entry takes the focus. */
export function RowRoom({ title, onClose, children }: RowRoomProps) {
  const room = useRef<HTMLFieldSetElement>(null);
  useEffect(() => room.current?.querySelector<HTMLElement>('[data-text], select')?.focus(), []);
  return (
    <fieldset class="row-room" ref={room}>
      <legend class="unseen">{title}</legend>
      {children}
      <button
        type="button"
        class="word quiet"
        onClick={() => {
          const word = room.current?.parentElement?.querySelector<HTMLElement>('.row-word');
          onClose();
          word?.focus();
        }}
      >
        Done<span class="unseen"> with {title}</span>
      </button>
    </fieldset>
  );
}
