import { useSheet } from '../../store/context';
import { PasteRoom } from '../shared/paste-room';

/** Variants that were copied from another design. */
export function AddCopied({ id }: { id: string }) {
  const sheet = useSheet();
  return (
    <PasteRoom
      id={`${id}-paste`}
      title="Add copied variants"
      label="Paste what “Copy” at a variant gave, of this design or another"
      rows={3}
      word="Add them"
      onTake={sheet.addCopied}
    />
  );
}
