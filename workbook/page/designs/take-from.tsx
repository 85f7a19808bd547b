import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { PieceOffer } from '../../../engine/index';
import { type Designs, useDesigns } from '../../store/designs';
import type { Design } from '../../store/keep/index';
import { ChoiceDialog } from '../set/choice-dialog';

/** The pieces of another design, while one is picked for the open design. */
export function TakeFrom() {
  const designs = useDesigns();
  const design = designs?.takingFrom.value;
  return designs && design ? <Pieces key={design.id} design={design} designs={designs} /> : null;
}

function Pieces({ design, designs }: { readonly design: Design; readonly designs: Designs }) {
  const offers = useSignal<readonly PieceOffer[] | undefined>(undefined);
  useEffect(() => {
    void designs.hangar.offers(design).then((answer) => {
      offers.value = answer ?? [];
    });
  }, [design, designs]);
  if (!offers.value) return null;
  return (
    <ChoiceDialog
      title={`Take from “${design.title || 'Untitled design'}” into this design`}
      places={offers.value.map((piece) => ({
        key: `${piece.of} ${piece.name}`,
        words: piece.title,
        aside: piece.says,
        choose: () => void designs.take(design, piece),
      }))}
      onClose={() => {
        designs.takingFrom.value = undefined;
      }}
    >
      <p>There is nothing in it that could be taken.</p>
    </ChoiceDialog>
  );
}
