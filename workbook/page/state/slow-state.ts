import { type ReadonlySignal, useSignal, useSignalEffect } from '@preact/signals';
import type { SheetState } from '../../store/sheet-state';

/** Work shorter than this is not worth a word, ms: said at every move of a finger it would only flicker and be read aloud. */
const PATIENCE = 300;

/** The state as it is told: "working" only when it lasts, everything else at once. */
export function useSlowState(state: ReadonlySignal<SheetState>): SheetState {
  const told = useSignal(state.peek());
  useSignalEffect(() => {
    const now = state.value;
    if (now.kind !== 'working') {
      told.value = now;
      return undefined;
    }
    const timer = setTimeout(() => {
      told.value = now;
    }, PATIENCE);
    return () => clearTimeout(timer);
  });
  return told.value;
}
