import { useSignal } from '@preact/signals';
import type { CheckCell } from '../../../engine/index';
import { goTo, type Place } from '../../controls/go-to';
import { useSheet } from '../../store/context';
import type { Sheet } from '../../store/sheet';
import type { SheetState } from '../../store/sheet-state';
import { opening } from '../../store/unrolling';
import { FaultList } from './fault-list';
import { useSlowState } from './slow-state';

/** Where a stop or what has no limit is. */
function placesOf({ stops, breaches, unlimited }: Sheet, kind: SheetState['kind']): readonly Place[] {
  const ofChecks = (checks: readonly CheckCell[]): Place[] => checks.map(({ id, name }) => ({ cell: id, path: name }));
  if (kind === 'unlimited') return ofChecks(unlimited.value);
  return kind === 'stop' ? [...ofChecks(stops.value), ...breaches.value] : [];
}

/** The state of the sheet at the right of the top; where something is wrong, the words lead to it, or open the list where there is more. */
export function StateWords() {
  const sheet = useSheet();
  const told = useSlowState(sheet.state);
  const listing = useSignal(false);
  const leads = told.kind !== 'settled' && told.kind !== 'working';
  const { kind } = sheet.state.value;
  const settled = kind === 'stop' || kind === 'unlimited' ? 'settled' : kind;
  return (
    <>
      <p class={`sheet-state ${told.kind}`} role="status" data-state={opening.value ? 'working' : settled}>
        {leads ? (
          <button
            type="button"
            class="word"
            aria-haspopup="dialog"
            onClick={() => {
              const [place, ...others] = placesOf(sheet, told.kind);
              if (place && others.length === 0) goTo(sheet, place);
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
