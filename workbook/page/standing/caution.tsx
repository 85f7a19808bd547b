import { useSheet } from '../../store/context';
import { type Caution, cautionsOfBlock, fillCaution } from './cautions';

/** Cautions beside the results that they bear on. `cell`: name of the cell that has the results. */
export function CautionNote({ cautions, cell }: { cautions: readonly Caution[]; cell: string }) {
  const sheet = useSheet();
  if (cautions.length === 0) return null;
  return (
    <div class="caution" role="note" aria-label="Caution">
      {cautions.flatMap((caution) =>
        caution.sentences.map((sentence) => (
          <p key={sentence}>
            {fillCaution(sentence, (path, unit) => sheet.shownIn(sheet.pathOfRole(path, cell), unit))}
          </p>
        )),
      )}
    </div>
  );
}

export function CautionFor({ of, cell }: { of: string; cell: string }) {
  return <CautionNote cautions={cautionsOfBlock(of)} cell={cell} />;
}
