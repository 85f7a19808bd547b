import { useSheet } from '../store/context';
import { useSlowState } from './slow-state';

/** The state of the sheet at the right of the top; where something is wrong, the words lead to the first place. */
export function StateWords() {
  const sheet = useSheet();
  const told = useSlowState(sheet.state);
  const faults = sheet.snapshot.value?.faults ?? [];
  const first = faults.find((fault) => fault.state === 'fault') ?? faults[0];
  const cell = sheet.document.value.cells.find((each) => each.id === first?.cell);
  const leads = cell && (told.kind === 'fault' || told.kind === 'waits');
  return (
    <p class={`sheet-state ${told.kind}`} role="status" data-state={sheet.state.value.kind}>
      {leads ? <a href={`#cell-${cell.name}`}>{told.words}</a> : told.words}
    </p>
  );
}
