import { useSignal, useSignalEffect } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { goAlong } from '../../controls/along';
import { useSheet } from '../../store/context';
import { ItemList } from './item-list';
import { SetCommands } from './set-commands';
import { SheetList } from './sheet-list';

type Opened = 'none' | 'sheets' | 'items';

/** Below the head of a window that is not wide: "Sheet 2 of 6: Model", which opens to the list; and the item list a press away. */
export function SetLine() {
  const sheet = useSheet();
  const opened = useSignal<Opened>('none');
  const room = useRef<HTMLDivElement>(null);
  const { id } = sheet.shownSheet.value;
  const list = sheet.sheetList.value;
  const told = list.find((each) => each.id === id);
  // A piece that is carried onto the line finds the list open.
  useSignalEffect(() => {
    if (sheet.carrying.value?.onto === '') opened.value = 'sheets';
  });
  const press = (what: Opened) => () => {
    opened.value = opened.value === what ? 'none' : what;
  };
  const close = (): void => {
    opened.value = 'none';
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: Escape closes the list that one of its buttons has opened.
    <div
      class="set-line"
      ref={room}
      onKeyDown={(event) => {
        if (event.key !== 'Escape' || opened.value === 'none') return;
        const { value: was } = opened;
        close();
        room.current?.querySelector<HTMLElement>(`[data-opens="${was}"]`)?.focus();
        event.stopPropagation();
      }}
    >
      <p class="set-line-words">
        <button
          type="button"
          class="word set-now"
          data-opens="sheets"
          data-onto=""
          aria-expanded={opened.value === 'sheets'}
          onClick={press('sheets')}
        >
          Sheet {told?.number ?? 1} of {list.length}: <strong>{told?.title}</strong>
        </button>
        <button
          type="button"
          class="word"
          data-opens="items"
          aria-expanded={opened.value === 'items'}
          onClick={press('items')}
        >
          On this sheet
        </button>
      </p>
      {opened.value === 'sheets' && (
        <nav aria-label="Sheets" onKeyDown={goAlong}>
          <SheetList onShown={close} />
          <SetCommands />
        </nav>
      )}
      {opened.value === 'items' && (
        <nav aria-label="On this sheet" onKeyDown={goAlong}>
          <ItemList onGone={close} />
        </nav>
      )}
    </div>
  );
}
