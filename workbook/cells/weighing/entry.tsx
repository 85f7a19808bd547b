import type { Part } from '../../../engine/index';
import { TextEntry } from '../../controls/text-entry';
import { useSheet } from '../../store/context';

/** What the scale says of a part, wherever on the bench it is typed. */
export function ScaleEntry({ path, part, onWeighed }: { path: string; part: Part; onWeighed?(): void }) {
  const sheet = useSheet();
  const at = `${path}.weighed`;
  const text = part.fields.weighed ?? '';
  return (
    <TextEntry
      secondary
      class="bench-entry"
      path={at}
      label={`${part.title}, on the scale`}
      text={text}
      shown={text === '' ? '' : sheet.entry(at)}
      placeholder="scale says"
      fault={sheet.faultAt(at)}
      onCommit={(typed) => {
        onWeighed?.();
        sheet.setText(at, typed);
      }}
      onUndoBeyond={sheet.undo}
    />
  );
}
