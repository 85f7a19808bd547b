import { useEffect } from 'preact/hooks';
import { useDesigns } from '../../store/designs';
import { momentWords } from '../../store/moment-words';
import type { SheetTold } from '../../store/sheet-set';
import { ChoiceDialog } from './choice-dialog';

/** The other designs of this machine: a press opens one with a copy of the sheet behind its own. */
export function CopyToDesign({ told, onClose }: { told: SheetTold; onClose(): void }) {
  const designs = useDesigns();
  useEffect(() => void designs?.readList(), [designs]);
  const list = designs?.list.value;
  if (!designs || !list) return null;
  const others = list.filter(({ id, deleted }) => deleted === undefined && id !== designs.open.value);
  return (
    <ChoiceDialog
      title={`Copy the sheet “${told.title}” to`}
      places={others.map((design) => ({
        key: design.id,
        words: design.title || 'Untitled design',
        aside: `changed ${momentWords(design.changed, Date.now())}`,
        choose: () => designs.copySheetTo(design, told.id),
      }))}
      onClose={onClose}
    >
      <p>
        There is no other design on this machine yet. Begin one or open a file, then come back to this one by “Open”.
      </p>
    </ChoiceDialog>
  );
}
