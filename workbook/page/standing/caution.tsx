import { fillCaution, type RoleCaution } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { greatestOf } from './cautions';

/** Cautions beside the results that they bear on. `cell`: name of the cell that has the results. */
export function CautionNote({ cautions, cell }: { cautions: readonly RoleCaution[]; cell: string }) {
  const sheet = useSheet();
  if (cautions.length === 0) return null;
  return (
    <div class="caution" role="note" aria-label="Caution">
      {cautions.flatMap((caution) =>
        caution.sentences.map((sentence) => (
          <p key={sentence}>
            {fillCaution(sentence, (name, unit) =>
              sheet.shownIn(name === 'greatest' ? greatestOf(caution, sheet) : `${cell}.${name}`, unit),
            )}
          </p>
        )),
      )}
    </div>
  );
}

/** Those of a role, below its cell. */
export function CautionFor({ of, cell }: { of: string; cell: string }) {
  const cautions = useSheet().offered.value?.cautions ?? [];
  return <CautionNote cautions={cautions.filter(({ role }) => role === of)} cell={cell} />;
}
