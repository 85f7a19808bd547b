import { useSignal } from '@preact/signals';
import { goTo } from '../../controls/go-to';
import { useSheet } from '../../store/context';
import { FaultList } from './fault-list';
import { useSlowState } from './slow-state';

/** The state of the sheet at the right of the top; where something is wrong, the words lead to it, or open the list where there is more. */
export function StateWords() {
  const sheet = useSheet();
  const told = useSlowState(sheet.state);
  const listing = useSignal(false);
  const leads = told.kind !== 'settled' && told.kind !== 'working';
  const { kind } = sheet.state.value;
  return (
    <>
      <p
        class={`sheet-state ${told.kind}`}
        role="status"
        data-state={kind === 'stop' || kind === 'unlimited' ? 'settled' : kind}
      >
        {leads ? (
          <button
            type="button"
            class="word"
            aria-haspopup="dialog"
            onClick={() => {
              const checks = told.kind === 'stop' ? sheet.stops.value : sheet.unlimited.value;
              const [check, ...others] = told.kind === 'stop' || told.kind === 'unlimited' ? checks : [];
              if (check && others.length === 0) goTo(sheet, { cell: check.id, path: check.name });
              else listing.value = true;
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
