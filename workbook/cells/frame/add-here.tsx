import { useComputed } from '@preact/signals';
import { useSheet } from '../../store/context';

/**
 * Between two cells: what opens the list of what can be put there, and the line where a carried cell would stand. The balloons
 * beside it and a key add there too, so Tab passes by unless it stands alone.
 */
export function AddHere({ at, words, alone }: { at: number; words: string; alone?: boolean }) {
  const sheet = useSheet();
  const here = useComputed(() => sheet.carrying.value?.to === at).value;
  return (
    <div class={`add-here ${here ? 'put-down' : ''}`}>
      <button
        type="button"
        class="word quiet"
        tabIndex={alone ? 0 : -1}
        aria-haspopup="dialog"
        onClick={() => {
          sheet.adding.value = at;
        }}
      >
        Add<span class="unseen"> {words}</span>
      </button>
    </div>
  );
}
