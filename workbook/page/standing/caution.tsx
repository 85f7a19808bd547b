import { fillCaution, type RoleCaution } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { greatestOf, limitOf, resultsOf, stands } from './cautions';
import { FromBefore } from './from-before';

/** Cautions beside the results that they bear on. `cell`: name of the cell that has the results. */
export function CautionNote({ cautions, cell }: { cautions: readonly RoleCaution[]; cell: string }) {
  const sheet = useSheet();
  // The greatest of all is not known while one of them waits.
  const now = cautions
    .map((caution) => ({ caution, ...sheet.beside([...resultsOf(caution, sheet), ...limitOf(caution, cell)]) }))
    .filter(({ caution, reader }) => stands(caution, cell, reader));
  if (now.length === 0) return null;
  return (
    <div class="caution" role="note" aria-label="Caution">
      {now.flatMap(({ caution, reader: { value, shownIn }, behind }) => {
        const greatest = greatestOf(caution, { namesOfRole: sheet.namesOfRole, value });
        return caution.sentences.map((sentence) => (
          <p key={sentence} class={behind ? 'behind' : undefined}>
            {fillCaution(
              sentence,
              (name, unit) => shownIn(name === 'greatest' ? greatest : `${cell}.${name}`, unit),
              sheet.units(),
            )}
            {behind && <FromBefore />}
          </p>
        ));
      })}
    </div>
  );
}

/** Those of a role, below its cell. */
export function CautionFor({ of, cell }: { of: string; cell: string }) {
  const cautions = useSheet().offered.value?.cautions ?? [];
  return <CautionNote cautions={cautions.filter(({ role }) => role === of)} cell={cell} />;
}
