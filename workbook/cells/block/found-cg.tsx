import { useSignal, useSignalEffect } from '@preact/signals';
import { type BlockCell, cellsOf, freeName, type PartsCell, type Reconciliation } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { addingPart } from '../parts/edits';
import { takenNames } from '../parts/taken';
import { culpritWords, verdictOf } from './found-cg-words';

/** How the CG that was found stands to the table of parts, and what the table is likely to lack. */
export function FoundCg({ cell }: { cell: BlockCell }) {
  const sheet = useSheet();
  const answer = useSignal<Reconciliation | undefined>(undefined);
  // Asked again once the hand rests.
  useSignalEffect(() => {
    const revision = sheet.snapshot.value?.revision;
    if (sheet.moving.value || revision === undefined) return undefined;
    let left = false;
    void sheet.reconcile(cell.name).then((told) => {
      if (!left) answer.value = told;
    });
    return () => {
      left = true;
    };
  });
  if (!answer.value) return null;
  const { state, culprits } = answer.value;
  const at = (result: string): string => `${cell.name}.${result}`;
  const told = {
    value: (result: string) => sheet.value(at(result)),
    shown: (result: string) => sheet.shown(at(result)),
  };
  const table = cellsOf(sheet.document.value).find(
    (each): each is PartsCell =>
      each.kind === 'parts' && (cell.fields.parts === undefined || each.name === cell.fields.parts),
  );
  return (
    <section class="found-cg" aria-label="Beside the table of parts" data-found={state}>
      <p role="status">{verdictOf(answer.value, told).join(' ')}</p>
      {culprits.length > 0 && table && (
        <>
          <p class="aside">
            {state === 'agrees' ? 'If anything is missing, look at these first' : 'Look at these first'}: they are often
            forgotten, and no part of the table names them. Usual masses, common practice, no source: weigh yours.
          </p>
          <ol class="found-culprits">
            {culprits.map((culprit) => (
              <li key={culprit.thing.part.name} data-culprit={culprit.thing.part.name}>
                {culprit.thing.part.title}, {culpritWords(culprit, sheet.name(at('mass')), sheet.name(at('x')))}{' '}
                <button
                  type="button"
                  class="word"
                  onClick={() => {
                    const { part } = culprit.thing;
                    const own = { ...part, name: freeName(part.name, takenNames(sheet, table)) };
                    sheet.edit(() => addingPart(table, own), own.title);
                  }}
                >
                  Add<span class="unseen"> {culprit.thing.part.title} to the table</span>
                </button>
              </li>
            ))}
          </ol>
        </>
      )}
    </section>
  );
}
