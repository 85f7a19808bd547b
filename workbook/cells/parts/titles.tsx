import { useEffect, useRef } from 'preact/hooks';
import { type Part, type PartsCell, rename } from '../../../engine/index';
import { TextEntry } from '../../controls/text-entry';
import { useSheet } from '../../store/context';
import { retitle } from './edits';
import { takenNames } from './taken';

interface TitlesProps {
  readonly cell: PartsCell;
  readonly part: Part;
  /** The part has just been added: its title takes the focus. */
  readonly isNew: boolean;
  /** The part goes on under another name. */
  onOpen(name: string): void;
}

/** What a part is called in the table and in formulas. */
export function PartTitles({ cell, part, isNew, onOpen }: TitlesProps) {
  const sheet = useSheet();
  const room = useRef<HTMLDivElement>(null);
  const path = `${cell.name}.${part.name}`;
  useEffect(() => {
    if (isNew) room.current?.querySelector('input')?.focus();
  }, [isNew]);
  const setTitle = (title: string): void => {
    sheet.edit((document) => {
      const { changes, name } = retitle(document, cell.name, part, title, takenNames(sheet, cell));
      onOpen(name);
      return changes;
    }, part.title);
  };
  const setName = (name: string): void => {
    sheet.edit((document) => {
      const renamed = rename(document, path, name);
      if (!renamed.ok) {
        sheet.tell({ title: `${part.title} keeps its name.`, sentences: [renamed.message] });
        return [];
      }
      onOpen(name);
      return renamed.changes;
    }, part.title);
  };
  return (
    <div ref={room} class="part-names">
      <div class="part-field">
        <span class="part-field-title">Title</span>
        <TextEntry
          path={`${path}#title`}
          label={`Title of ${part.title}`}
          text={part.title}
          shown={part.title}
          onCommit={setTitle}
          onUndoBeyond={sheet.undo}
        />
        <p class="aside">What the part is called in this table.</p>
      </div>
      <div class="part-field">
        <span class="part-field-title">Name</span>
        <TextEntry
          path={`${path}#name`}
          label={`Name of ${part.title} in formulas`}
          text={part.name}
          shown={part.name}
          onCommit={setName}
          onUndoBeyond={sheet.undo}
        />
        <p class="aside">Formulas say {path}.mass; they follow when the name changes.</p>
      </div>
    </div>
  );
}
