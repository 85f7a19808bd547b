import { useState } from 'preact/hooks';
import type { PartsCell } from '../../../../engine/index';
import type { PasteColumn } from '../../shared/paste-columns';
import { PasteForm } from '../../shared/paste-form';
import { PastedRows } from './pasted-rows';

/** A table of parts from elsewhere. */
export function PasteParts({ cell }: { cell: PartsCell }) {
  const [matched, match] = useState<readonly PasteColumn[] | undefined>(undefined);
  return (
    <PasteForm
      id={`${cell.id}-paste-parts`}
      class="paste-parts"
      title="Paste parts, or take them from a CSV file"
      about="Rows copied from a table, or comma-separated values. The first line names the columns: part, quantity, mass, x …"
      onOther={() => match(undefined)}
    >
      {({ text, separators, done }) => (
        <PastedRows
          cell={cell}
          text={text}
          separators={separators}
          matched={matched}
          onMatch={match}
          onAdded={(count) =>
            done(`${count === 1 ? 'One part was' : `${count} parts were`} added. Undo takes all of it back.`)
          }
        />
      )}
    </PasteForm>
  );
}
