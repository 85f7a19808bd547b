import { useSignal } from '@preact/signals';
import { useSheet } from '../../store/context';
import { FaultList } from './fault-list';
import { useSlowState } from './slow-state';

/** The state of the sheet at the right of the top; where something is wrong, the words open the list of it. */
export function StateWords() {
  const sheet = useSheet();
  const told = useSlowState(sheet.state);
  const listing = useSignal(false);
  const leads = told.kind === 'fault' || told.kind === 'waits';
  return (
    <>
      <p class={`sheet-state ${told.kind}`} role="status" data-state={sheet.state.value.kind}>
        {leads ? (
          <button
            type="button"
            class="word"
            aria-haspopup="dialog"
            onClick={() => {
              listing.value = true;
            }}
          >
            {told.words}
          </button>
        ) : (
          told.words
        )}
      </p>
      {listing.value && (
        <FaultList
          onClose={() => {
            listing.value = false;
          }}
        />
      )}
    </>
  );
}
