import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { type Cell, rename, retitleCell } from '../../../engine/index';
import { TextEntry } from '../../controls/text-entry';
import { useSheet } from '../../store/context';
import { focusBalloon, focusContent } from './focus';

/** What a cell is called on the sheet and in formulas. A title typed and finished by Enter leads on into the cell. */
export function TitleForm({ cell }: { cell: Cell }) {
  const sheet = useSheet();
  const room = useRef<HTMLFieldSetElement>(null);
  const refused = useSignal('');
  useEffect(() => room.current?.querySelector<HTMLElement>('[data-text]')?.focus(), []);
  const now = (): Cell => sheet.cells.peek().find((each) => each.id === cell.id) ?? cell;
  const close = (): void => {
    sheet.naming.value = undefined;
  };
  const setTitle = (title: string): void => {
    refused.value = title === '' ? `Each piece of the sheet has a title. This one stays “${cell.title}”.` : '';
    if (title !== '') sheet.edit((document) => retitleCell(document, cell.id, title), `the title of ${cell.title}`);
  };
  const setName = (name: string): void => {
    refused.value = '';
    sheet.edit((document) => {
      const renamed = rename(document, now().name, name);
      if (renamed.ok) return renamed.changes;
      refused.value = `${renamed.message} It is still called ${now().name}.`;
      return [];
    }, `the name of ${cell.title}`);
  };
  return (
    <fieldset
      ref={room}
      class="title-form"
      onKeyDown={(event) => {
        if (event.key !== 'Enter' || refused.peek() !== '') return;
        if (event.target instanceof HTMLButtonElement) return;
        close();
        focusContent(now());
      }}
    >
      <legend class="unseen">Title and name of {cell.title}</legend>
      <div class="title-row">
        <span>Title</span>
        <TextEntry
          path={`${cell.id}#title`}
          label={`Title of ${cell.title}`}
          text={cell.title}
          shown={cell.title}
          onCommit={setTitle}
          onUndoBeyond={sheet.undo}
        />
      </div>
      <div class="title-row">
        <span>Name</span>
        <TextEntry
          path={`${cell.id}#name`}
          label={`Name of ${cell.title} in formulas`}
          text={cell.name}
          shown={cell.name}
          onCommit={setName}
          onUndoBeyond={sheet.undo}
        />
        <span class="aside">Formulas that say {cell.name} follow when it changes.</span>
      </div>
      <p class="fault-words" role="alert">
        {refused.value}
      </p>
      <button
        type="button"
        class="word quiet"
        onClick={() => {
          close();
          focusBalloon(now());
        }}
      >
        Done<span class="unseen"> with title and name of {cell.title}</span>
      </button>
    </fieldset>
  );
}
