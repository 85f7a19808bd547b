import { useSignal, useSignalEffect } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { BlockCell, BlockDescription, MakingAnswer } from '../../../engine/index';
import { goTo } from '../../controls/go-to';
import { useSheet } from '../../store/context';
import { MakingSays } from './making-says';

/** Another kind for a piece of the model: what it keeps, takes and takes away is said before it is done. */
export function SwapDialog({ cell, kinds }: { cell: BlockCell; kinds: readonly BlockDescription[] }) {
  const sheet = useSheet();
  const dialog = useRef<HTMLDialogElement>(null);
  const kind = useSignal(kinds[0]!.kind);
  const preview = useSignal<MakingAnswer | undefined>(undefined);
  const refused = useSignal('');
  useEffect(() => dialog.current?.showModal(), []);
  useSignalEffect(() => {
    const asked = kind.value;
    preview.value = undefined;
    void sheet.previewSwap(cell.id, asked).then((answer) => {
      if (kind.peek() === asked) preview.value = answer;
    });
  });
  const put = async (): Promise<void> => {
    const made = await sheet.putSwap(cell, kind.peek());
    refused.value = typeof made === 'string' ? made : '';
    if (typeof made === 'string') return;
    dialog.current?.close();
    goTo(sheet, made);
  };
  return (
    <dialog
      ref={dialog}
      class="open-dialog making-dialog"
      aria-labelledby="swap-title"
      onClose={() => {
        sheet.swapping.value = undefined;
      }}
    >
      <div class="dialog-head">
        <h2 id="swap-title">Another kind for {cell.title}</h2>
        <button type="button" class="word" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </div>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void put();
        }}
      >
        <fieldset class="swap-kinds">
          <legend class="unseen">Kind</legend>
          {kinds.map((each) => (
            <label key={each.kind} class="tick">
              <input
                type="radio"
                name="swap-kind"
                checked={kind.value === each.kind}
                onChange={() => {
                  kind.value = each.kind;
                }}
              />
              <span>
                {each.title}
                <span class="aside">{each.doc}</span>
              </span>
            </label>
          ))}
        </fieldset>
        <div class="swap-says" role="status">
          {preview.value ? <MakingSays of={preview.value} /> : 'Looking at your design …'}
        </div>
        <p class="form-problem" role="alert">
          {refused.value}
        </p>
        <p class="commands">
          <button type="submit" class="word done" disabled={!preview.value?.ok}>
            Put it in its place
          </button>
        </p>
      </form>
    </dialog>
  );
}
