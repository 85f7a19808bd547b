import { useEffect } from 'preact/hooks';
import { type Designs, useDesigns } from '../../store/designs';
import { momentWords } from '../../store/moment-words';
import { ChoiceDialog } from './choice-dialog';

type Design = NonNullable<Designs['list']['value']>[number];

interface CopyProps {
  readonly title: string;
  choose(designs: Designs, design: Design): void;
  onClose(): void;
}

/** The other designs of this machine: a press opens one with a copy of something of this one. */
export function CopyToDesign({ title, choose, onClose }: CopyProps) {
  const designs = useDesigns();
  useEffect(() => void designs?.readList(), [designs]);
  const list = designs?.list.value;
  if (!designs || !list) return null;
  const others = list.filter(({ id, deleted }) => deleted === undefined && id !== designs.open.value);
  return (
    <ChoiceDialog
      title={title}
      places={others.map((design) => ({
        key: design.id,
        words: design.title || 'Untitled design',
        aside: `changed ${momentWords(design.changed, Date.now())}`,
        choose: () => choose(designs, design),
      }))}
      onClose={onClose}
    >
      <p>
        There is no other design on this machine yet. Begin one or open a file, then come back to this one by “Open”.
      </p>
    </ChoiceDialog>
  );
}

/** The design to which a variant is copied, where one is to be. */
export function CopyVariant() {
  const copying = useDesigns()?.copying;
  const name = copying?.value;
  if (!copying || name === undefined) return null;
  return (
    <CopyToDesign
      title={`Copy the variant “${name}” to`}
      choose={(designs, design) => designs.copyVariantTo(design, name)}
      onClose={() => {
        copying.value = undefined;
      }}
    />
  );
}
