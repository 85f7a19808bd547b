import { useSheet } from '../store/context';

/** Sets the design that everything is compared with, and goes back to it. */
export function BaselineCommands() {
  const sheet = useSheet();
  const baseline = sheet.document.value.baseline;
  const moved = baseline !== undefined && Object.keys(baseline).length > 0;
  return (
    <p class="baseline-commands">
      <button type="button" class="word" disabled={baseline !== undefined && !moved} onClick={sheet.takeBaseline}>
        Take this design as the baseline
      </button>
      {moved && (
        <button type="button" class="word" onClick={sheet.returnToBaseline}>
          Return to the baseline
        </button>
      )}
    </p>
  );
}
