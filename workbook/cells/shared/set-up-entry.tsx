import { TextEntry } from '../../controls/text-entry';
import { useSheet } from '../../store/context';

interface EntryProps {
  /** The word above it, which a screen reader hears in the label. */
  readonly word: string;
  readonly label: string;
  readonly path: string;
  readonly text: string;
  /** What stands there otherwise; missing: as it was typed, with its unit. */
  readonly shown?: string;
  readonly placeholder: string;
}

/** A number that is typed in the form of a piece. The sentences of its fault stand below the row of entries. */
export function SetUpEntry({ word, label, path, text, shown, placeholder }: EntryProps) {
  const sheet = useSheet();
  return (
    <div>
      <span class="set-up-word" aria-hidden="true">
        {word}
      </span>
      <TextEntry
        path={path}
        label={label}
        text={text}
        shown={text === '' ? '' : (shown ?? sheet.entry(path))}
        placeholder={placeholder}
        fault={sheet.faultAt(path)}
        faultElsewhere
        onCommit={(typed) => sheet.setText(path, typed)}
        onUndoBeyond={sheet.undo}
      />
    </div>
  );
}
