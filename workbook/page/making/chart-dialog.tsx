import { useSignal, useSignalEffect } from '@preact/signals';
import { useEffect, useMemo, useRef } from 'preact/hooks';
import type { ChartOffer, ChartWish, MakingAnswer } from '../../../engine/index';
import { nameOptions } from '../../cells/index';
import { goTo } from '../../controls/go-to';
import { stayInSight } from '../../controls/in-sight';
import { Combobox, type PickOption } from '../../controls/pick/index';
import { useSheet } from '../../store/context';
import { MakingSays } from './making-says';

type Offered = Extract<ChartOffer, { ok: true }>;

/** Asks what a number is drawn against and what there is a line for each of, and puts the chart with its trial series on the open sheet. */
export function ChartDialog({ of }: { of: string }) {
  const sheet = useSheet();
  const dialog = useRef<HTMLDialogElement>(null);
  const offer = useSignal<ChartOffer | undefined>(undefined);
  const title = sheet.name(of)?.title ?? of;
  useEffect(() => {
    dialog.current?.showModal();
    void sheet.chartOffer(of).then((answer) => {
      offer.value = answer;
    });
  }, [sheet, of, offer]);
  const close = (): void => dialog.current?.close();
  const told = offer.value;
  return (
    <dialog
      ref={dialog}
      class="open-dialog making-dialog"
      aria-labelledby="chart-dialog-title"
      onClose={() => {
        sheet.charting.value = undefined;
      }}
    >
      <div class="dialog-head">
        <h2 id="chart-dialog-title">Make a chart of {title}</h2>
        <button type="button" class="word" onClick={close}>
          Close
        </button>
      </div>
      {!told && <p role="status">Looking at your design …</p>}
      {told?.ok === false && <p class="form-problem">{told.message}</p>}
      {told?.ok && <ChartQuestions of={of} offer={told} onDone={close} />}
    </dialog>
  );
}

function ChartQuestions({ of, offer, onDone }: { of: string; offer: Offered; onDone(): void }) {
  const sheet = useSheet();
  const wish = useSignal<ChartWish>({ of, other: offer.others[0]!, lines: '' });
  const preview = useSignal<MakingAnswer | undefined>(undefined);
  const refused = useSignal('');
  const room = useRef<HTMLFormElement>(null);
  const make = useRef<HTMLButtonElement>(null);
  useSignalEffect(() => {
    const asked = wish.value;
    void sheet.previewChart(asked).then((answer) => {
      if (wish.peek() === asked) preview.value = answer;
    });
  });
  // A keyboard that slides in would hide what is asked.
  useEffect(() => {
    if (!matchMedia('(pointer: coarse)').matches) room.current?.querySelector('input')?.focus();
  }, []);
  const all = sheet.names.value;
  const options = useMemo(() => {
    const byPath = new Map(nameOptions(sheet, () => true).map((option) => [option.value, option]));
    const of = (paths: readonly string[]): PickOption[] => paths.flatMap((path) => byPath.get(path) ?? []);
    return { others: of(offer.others), lines: [{ value: '', title: 'nothing: one line' }, ...of(offer.lines)] };
  }, [all, offer]);
  const { other, lines } = wish.value;
  const put = async (): Promise<void> => {
    const made = await sheet.putChart(wish.peek());
    refused.value = typeof made === 'string' ? made : '';
    if (typeof made === 'string') return;
    onDone();
    goTo(sheet, made);
    requestAnimationFrame(() => stayInSight(document.activeElement));
  };
  return (
    <form
      ref={room}
      onSubmit={(event) => {
        event.preventDefault();
        void put();
      }}
    >
      <label for="chart-other">{offer.asks === 'against' ? 'Against what?' : 'Which result?'}</label>
      <Combobox
        id="chart-other"
        value={other}
        options={options.others}
        placeholder="choose, or type to find"
        opened
        onPick={(path) => {
          wish.value = { ...wish.peek(), other: path };
          room.current?.querySelector<HTMLElement>('#chart-lines')?.focus();
        }}
      />
      <label for="chart-lines">A line for each of what?</label>
      <Combobox
        id="chart-lines"
        value={lines}
        options={options.lines.filter(({ value }) => value !== other && value !== of)}
        placeholder="choose, or type to find"
        onPick={(path) => {
          wish.value = { ...wish.peek(), lines: path };
          make.current?.focus();
        }}
      />
      <MakingSays of={preview.value} />
      <p class="form-problem" role="alert">
        {refused.value}
      </p>
      <p class="commands">
        <button ref={make} type="submit" class="word done">
          Make the chart
        </button>
      </p>
    </form>
  );
}
