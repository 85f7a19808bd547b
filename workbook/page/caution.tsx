import { useSheet } from '../store/context';
import { type Caution, cautionsOfBlock, fillCaution } from './cautions';

/** Cautions beside the results that they bear on. */
export function CautionNote({ cautions }: { cautions: readonly Caution[] }) {
  const sheet = useSheet();
  if (cautions.length === 0) return null;
  return (
    <div class="caution" role="note" aria-label="Caution">
      {cautions.flatMap((caution) =>
        caution.sentences.map((sentence) => <p key={sentence}>{fillCaution(sentence, sheet.shownIn)}</p>),
      )}
    </div>
  );
}

export function CautionFor({ block }: { block: string }) {
  return <CautionNote cautions={cautionsOfBlock(block)} />;
}
