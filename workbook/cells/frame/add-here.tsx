import { useComputed } from '@preact/signals';
import { useSheet } from '../../store/context';

/** Between two cells: what opens the list of what can be put there, and the line where a carried cell would stand. */
export function AddHere({ at, words }: { at: number; words: string }) {
  const sheet = useSheet();
  const here = useComputed(() => sheet.carrying.value?.to === at).value;
  return (
    <div class={`add-here ${here ? 'put-down' : ''}`}>
      <button
        type="button"
        class="word quiet"
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
