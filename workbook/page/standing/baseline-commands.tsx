import { along } from '../../controls/along';
import { useSheet } from '../../store/context';

/** Sets the design that everything is compared with, and goes back to it. */
export function BaselineCommands() {
  const sheet = useSheet();
  const state = sheet.baselineState.value;
  return (
    <p class="baseline-commands">
      <button type="button" {...along(true)} class="word" disabled={state === 'same'} onClick={sheet.takeBaseline}>
        Take this design as the baseline
      </button>
      {state === 'none' && <span class="aside">Everything is then compared with the design as it is now.</span>}
      {state === 'moved' && (
        <button type="button" {...along()} class="word" onClick={sheet.returnToBaseline}>
          Return to the baseline
        </button>
      )}
      {state !== 'none' && (
        <button
          type="button"
          {...along(state === 'same')}
          class="word"
          onClick={() => sheet.changeHead({ baseline: null, baseline_design: null }, 'removing the baseline')}
        >
          Remove the baseline
        </button>
      )}
    </p>
  );
}
