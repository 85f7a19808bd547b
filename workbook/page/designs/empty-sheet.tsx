import { useSheet } from '../../store/context';
import { useDesigns } from '../../store/designs';

/** What can be done where a sheet has no cells. */
export function EmptySheet() {
  const sheet = useSheet();
  const designs = useDesigns();
  return (
    <section class="empty-sheet" aria-label="Empty sheet">
      <p>
        <strong>This sheet is empty.</strong> A few numbers make a whole first design; a kept design or a file can be
        opened; or put it together yourself with “Add” at the top, wing and tail first.
      </p>
      <p class="commands">
        {designs && (
          <button type="button" class="word" onClick={() => (designs.beginning.value = true)}>
            Begin with my model
          </button>
        )}
        <button type="button" class="word" onClick={() => (sheet.choosing.value = true)}>
          Open a design or a file
        </button>
      </p>
    </section>
  );
}
