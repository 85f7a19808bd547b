import { useEffect, useRef } from 'preact/hooks';
import { TextEntry } from '../../controls/text-entry';
import { useSheet } from '../../store/context';
import type { SheetTold } from '../../store/sheet-set';

/** What a sheet is called. */
export function SheetTitleForm({ told: { id, title }, onClose }: { told: SheetTold; onClose(): void }) {
  const sheet = useSheet();
  const room = useRef<HTMLFieldSetElement>(null);
  useEffect(() => room.current?.querySelector<HTMLElement>('[data-text]')?.focus(), []);
  return (
    <fieldset
      ref={room}
      class="sheet-title-form"
      onKeyDown={(event) => {
        if (event.key === 'Enter' || event.key === 'Escape') onClose();
      }}
    >
      <legend class="unseen">Title of the sheet {title}</legend>
      <TextEntry
        path={`${id}#sheet-title`}
        label={`Title of the sheet ${title}`}
        text={title}
        shown={title}
        onCommit={(text) => text.trim() !== '' && sheet.titleSheet(id, text.trim())}
        onUndoBeyond={sheet.undo}
      />
      <button type="button" class="word quiet" onClick={onClose}>
        Done
      </button>
    </fieldset>
  );
}
