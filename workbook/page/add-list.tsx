import { useEffect, useRef } from 'preact/hooks';
import { blockOffer, focusContent, gapsOf, type Offer, plainOffers, standingDrawing } from '../cells/index';
import { useSheet } from '../store/context';

/** What can be added and where: one line for each kind of cell, then the pieces of the model in the order of building. */
export function AddList({ at }: { at: number }) {
  const sheet = useSheet();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  const cells = sheet.cells.value;
  const { pieces } = sheet.shownSheet.value;
  const offered = sheet.offered.value;
  const close = (): void => {
    sheet.adding.value = undefined;
  };
  const add = (offer: Offer): void => {
    close();
    const cell = sheet.addCell(at, offer.make);
    if (!cell) return;
    // A block and a drawing have a title that fits; the others wait for one.
    if (TITLED.has(cell.kind)) focusContent(cell);
    else sheet.naming.value = cell.id;
  };
  const line = (offer: Offer, more = '') => (
    <li key={offer.key}>
      <button type="button" class="word" aria-describedby={`about-${offer.key}`} onClick={() => add(offer)}>
        {offer.word}
      </button>
      <p class="aside" id={`about-${offer.key}`}>
        {offer.about}
        {more}
      </p>
    </li>
  );
  return (
    <dialog ref={dialog} class="open-dialog add-list" aria-labelledby="add-title" onClose={close}>
      <div class="dialog-head">
        <h2 id="add-title">Add</h2>
        <button type="button" class="word" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </div>
      <label class="add-place">
        <span>Where</span>
        <select
          value={at}
          onChange={(event) => {
            sheet.adding.value = Number(event.currentTarget.value);
          }}
        >
          {gapsOf(pieces, standingDrawing(cells), at).map((gap) => (
            <option key={gap.at} value={gap.at}>
              {gap.words}
            </option>
          ))}
        </select>
      </label>
      <ul>{plainOffers(offered).map((offer) => line(offer))}</ul>
      <h3>Pieces of the model, in the order of building</h3>
      <ul>
        {(offered?.blocks ?? []).map((block) => {
          const has = cells.some((cell) => cell.kind === 'model' && cell.of === block.kind);
          return line(blockOffer(block), has ? ' The design has one already.' : '');
        })}
      </ul>
    </dialog>
  );
}

const TITLED: ReadonlySet<string> = new Set(['model', 'drawing', 'parts']);
