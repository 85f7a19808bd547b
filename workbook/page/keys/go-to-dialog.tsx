import { useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import { Combobox } from '../../controls/pick/index';
import { useSheet } from '../../store/context';
import { useDesigns } from '../../store/designs';
import { goalsOf } from './places';

/** Goes anywhere, or does anything, by a few letters. */
export function GoToDialog({ onClose }: { onClose(): void }) {
  const sheet = useSheet();
  const designs = useDesigns();
  const dialog = useRef<HTMLDialogElement>(null);
  const goals = useMemo(() => goalsOf(sheet, designs), [sheet, designs]);
  useLayoutEffect(() => {
    dialog.current?.showModal();
    dialog.current?.querySelector('input')?.focus();
  }, []);
  return (
    <dialog ref={dialog} class="open-dialog go-to-dialog" aria-labelledby="go-to-title" onClose={onClose}>
      <div class="dialog-head">
        <h2 id="go-to-title">
          <label for="go-to">Go to</label>
        </h2>
        <button type="button" class="word" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </div>
      <Combobox
        id="go-to"
        options={goals}
        placeholder="a sheet, a piece, a variable, a command"
        opened
        onPick={(value) => {
          const goal = goals.find((each) => each.value === value);
          dialog.current?.close();
          // The dialog gives the focus back as it closes; what comes next takes it from there.
          setTimeout(() => goal?.run());
        }}
      />
      <p class="commands">
        <button
          type="button"
          class="word"
          onClick={() => {
            dialog.current?.close();
            setTimeout(() => {
              sheet.asking.value = 'keys';
            });
          }}
        >
          All keys
        </button>
      </p>
    </dialog>
  );
}
