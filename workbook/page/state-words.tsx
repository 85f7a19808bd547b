import { useSheet } from '../store/context';
import { useSlowState } from './slow-state';

/** The state of the sheet at the right of the top; where something is wrong, the words lead to the first place. */
export function StateWords() {
  const sheet = useSheet();
  const told = useSlowState(sheet.state);
  const leads = told.kind === 'fault' || told.kind === 'waits' ? sheet.firstFault.value : undefined;
  return (
    <p class={`sheet-state ${told.kind}`} role="status" data-state={sheet.state.value.kind}>
      {leads ? <a href={`#cell-${leads}`}>{told.words}</a> : told.words}
    </p>
  );
}
