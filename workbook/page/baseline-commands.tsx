import { useSheet } from '../store/context';

/** Sets the design that everything is compared with, and goes back to it. */
export function BaselineCommands() {
  const sheet = useSheet();
  const state = sheet.baselineState.value;
  return (
    <p class="baseline-commands">
      <button type="button" class="word" disabled={state === 'same'} onClick={sheet.takeBaseline}>
        Take this design as the baseline
      </button>
      {state === 'moved' && (
        <button type="button" class="word" onClick={sheet.returnToBaseline}>
          Return to the baseline
        </button>
      )}
    </p>
  );
}
