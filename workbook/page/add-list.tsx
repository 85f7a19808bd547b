import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { blockOffer, focusContent, gapsOf, type Offer, plainOffers, standingDrawing } from '../cells/index';
import { findOptions } from '../controls/pick/index';
import { useSheet } from '../store/context';

/** What can be added and where: one line for each kind of cell, then the pieces of the model in the order of building. */
export function AddList({ at }: { at: number }) {
  const sheet = useSheet();
  const dialog = useRef<HTMLDialogElement>(null);
  const wanted = useSignal('');
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
  const plain = foundOffers(plainOffers(offered), wanted.value);
  const blocks = foundOffers((offered?.blocks ?? []).map(blockOffer), wanted.value);
  const [first] = [...plain, ...blocks];
  const there = new Set(
    (offered?.blocks ?? [])
      .filter(({ kind }) => cells.some((cell) => cell.kind === 'model' && cell.of === kind))
      .map((block) => blockOffer(block).key),
  );
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
      <label class="add-place">
        <span>Find</span>
        <input
          class="text-entry"
          type="text"
          autocomplete="off"
          placeholder="what it is called or for"
          value={wanted.value}
          onInput={({ currentTarget }) => {
            wanted.value = currentTarget.value;
          }}
          onKeyDown={(event) => {
            if (event.key !== 'Enter' || wanted.value.trim() === '' || !first) return;
            event.preventDefault();
            add(first);
          }}
        />
      </label>
      <p role="status">{!first && 'Nothing of that name can be added. Write another word.'}</p>
      <ul>{plain.map((offer) => line(offer))}</ul>
      {blocks.length > 0 && <h3>Pieces of the model, in the order of building</h3>}
      <ul>{blocks.map((offer) => line(offer, there.has(offer.key) ? ' The design has one already.' : ''))}</ul>
    </dialog>
  );
}

/** The offers that fit what is typed as lines of a pick list do, the likeliest first; all in their order where nothing is. */
function foundOffers(offers: readonly Offer[], typed: string): readonly Offer[] {
  if (typed.trim() === '') return offers;
  const lines = offers.map(({ key, word, about }) => ({ value: key, title: word, detail: about }));
  const keys = findOptions(lines, typed).shown.map(({ value }) => value);
  return keys.map((key) => offers.find((offer) => offer.key === key)!);
}

const TITLED: ReadonlySet<string> = new Set(['model', 'drawing', 'parts']);
