import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { useSheet } from '../../store/context';
import { askingNewsletter } from '../../store/figures';
import { type PrintedKind, printedKinds } from '../../store/printed-kinds';
import {
  askingFullSize,
  askingToPrint,
  choosePrinted,
  layOutForPaper,
  leftOut,
  notPrinted,
  type PrintedPart,
  printed,
} from '../../store/printing';
import { PrintTicks } from './print-ticks';
import { whenReady } from './when-ready';

/** What to print. What is drawn when it comes on the screen is brought first, so that the first print has all of it. */
export function PrintDialog() {
  const sheet = useSheet();
  const dialog = useRef<HTMLDialogElement>(null);
  const go = useRef<HTMLButtonElement>(null);
  const stop = useRef<AbortController>(undefined);
  const waiting = useSignal<number | undefined>(undefined);
  const { title } = sheet.shownSheet.value;
  const count = sheet.sheetList.value.length;
  useEffect(() => {
    dialog.current?.showModal();
    go.current?.focus();
  }, []);
  const none = printed.value === 'some' && sheet.sheetList.value.every(({ id }) => leftOut.value.has(id));
  const onClose = (): void => {
    askingToPrint.value = false;
    if (stop.current && !stop.current.signal.aborted) {
      stop.current.abort();
      layOutForPaper(false);
    }
  };
  const print = (): void => {
    stop.current = undefined;
    dialog.current?.close();
    window.print();
  };
  const begin = async (): Promise<void> => {
    const leaving = new AbortController();
    stop.current = leaving;
    sheet.settle();
    layOutForPaper(true);
    const ready = await whenReady(
      () => sheet.state.peek().kind === 'working',
      (left) => {
        waiting.value = left;
      },
      leaving.signal,
    );
    if (ready && stop.current === leaving) print();
  };
  const choice = (part: PrintedPart, words: string) => (
    <label>
      <input
        type="radio"
        name="printed"
        checked={printed.value === part}
        disabled={waiting.value !== undefined}
        onChange={() => choosePrinted(part)}
      />
      {words}
    </label>
  );
  return (
    <dialog ref={dialog} class="open-dialog print-dialog" aria-labelledby="print-title" onClose={onClose}>
      <div class="dialog-head">
        <h2 id="print-title">Print</h2>
        <button type="button" class="word" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </div>
      <fieldset class="print-choice">
        <legend class="unseen">What to print</legend>
        {choice('sheet', `This sheet: ${title}`)}
        {choice('set', `The whole set: ${count === 1 ? '1 sheet' : `${count} sheets`}`)}
        {count > 1 && choice('some', 'Some sheets of it')}
        {choice('weights', 'The weights as one statement')}
      </fieldset>
      {printed.value === 'some' && (
        <PrintTicks
          legend="Sheets"
          options={sheet.sheetList.value.map(({ id, title: words }, k) => ({ key: id, words: `${k + 1} ${words}` }))}
          out={leftOut.value}
          onChange={(out) => {
            leftOut.value = out;
          }}
        />
      )}
      {printed.value !== 'weights' && (
        <PrintTicks
          legend="What of it"
          options={Object.entries(printedKinds).map(([key, words]) => ({ key: key as PrintedKind, words }))}
          out={notPrinted.value}
          onChange={(out) => {
            notPrinted.value = out;
          }}
        />
      )}
      <p class="aside">
        On A4 or Letter, upright, at full size: then the drawing is true to the scale in the title block. Closed pieces
        are printed whole.
      </p>
      <p class="print-waits" role="status">
        {waiting.value !== undefined &&
          (waiting.value === 1 ? 'One thing is still computed.' : `${waiting.value} things are still computed.`)}
      </p>
      <p class="commands">
        {waiting.value === undefined ? (
          <>
            <button ref={go} type="button" class="word" disabled={none} onClick={() => void begin()}>
              Print
            </button>
            <button
              type="button"
              class="word"
              onClick={() => {
                dialog.current?.close();
                askingFullSize.value = true;
              }}
            >
              Templates at full size
            </button>
            <button
              type="button"
              class="word"
              onClick={() => {
                dialog.current?.close();
                askingNewsletter.value = true;
              }}
            >
              Newsletter page
            </button>
          </>
        ) : (
          <button type="button" class="word" onClick={print}>
            Print what there is
          </button>
        )}
      </p>
    </dialog>
  );
}
