import { useSignal, useSignalEffect } from '@preact/signals';
import { useState } from 'preact/hooks';
import { type DayAnswer, type DayCard, type DayForm, type LogCell, readEntry } from '../../engine/index';
import { useSheet } from '../store/context';
import { closeField } from '../store/field-open';
import { keepDay, keptDay } from '../store/kept-day';
import type { Sheet } from '../store/sheet';
import { today } from '../store/today';
import { DayAnswerCard } from './card';
import { DayEntries } from './entries';
import { RaceAnswer } from './race';

type Side = 'day' | 'card' | 'race';
const SIDES: readonly (readonly [Side, string])[] = [
  ['day', 'The day'],
  ['card', 'Card'],
  ['race', 'Race'],
];

/** The flying day as one view for the field: what the day is like, and the card for it. */
export function FieldView() {
  const sheet = useSheet();
  const day = today();
  const form = useSignal<DayForm>(keptDay(day));
  const [side, turn] = useState<Side>(form.peek().wind === undefined ? 'day' : 'card');
  const [answer, tell] = useState<DayAnswer | undefined>(undefined);
  const [works, work] = useState(true);
  useSignalEffect(() => {
    const revision = sheet.snapshot.value?.revision;
    const said = form.value;
    if (revision === undefined) return undefined;
    let left = false;
    work(true);
    void sheet.dayCard(said).then((told) => {
      if (left) return;
      tell(told);
      work(false);
    });
    return () => {
      left = true;
    };
  });
  const change = (next: DayForm): void => {
    keepDay(next);
    form.value = next;
  };
  const units = sheet.units();
  const card = answer?.ok ? answer : undefined;
  return (
    <main class="at-field" data-field={works ? 'working' : 'settled'}>
      <header class="field-head">
        <h1>{sheet.part('title') || 'Untitled design'}</h1>
        <span role="status" class="field-working">
          {works ? 'working …' : ''}
        </span>
        <nav aria-label="At the field">
          {SIDES.map(([key, word]) => (
            <button key={key} type="button" class="word" aria-pressed={side === key} onClick={() => turn(key)}>
              {word}
            </button>
          ))}
          <button type="button" class="word" onClick={() => window.print()}>
            Print
          </button>
          <button type="button" class="word" onClick={closeField}>
            Close
          </button>
        </nav>
      </header>
      {answer && !answer.ok && <p role="alert">This design has no card: {answer.message}</p>}
      {card && (
        <div class="field-body">
          <div class={side === 'day' ? 'field-side' : 'field-side away'}>
            <DayEntries
              form={form.value}
              whole={said(card.form, form.value)}
              now={card.now}
              units={units}
              onChange={change}
            />
          </div>
          <div class={side === 'card' ? 'field-side' : 'field-side away'}>
            <DayAnswerCard card={card} tested={testedToday(sheet, card.testLoad, day)} units={units} />
          </div>
          <div class={side === 'race' ? 'field-side' : 'field-side away'}>
            <RaceAnswer race={card.race} units={units} />
          </div>
        </div>
      )}
    </main>
  );
}

/** What was said last, before its answer is here. */
function said(answered: DayCard['form'], form: DayForm): DayCard['form'] {
  const now = { ...answered, ...form };
  return { ...now, gusts: Math.max(now.wind, now.gusts) };
}

/** Whether a log says that a set of lines in use was pull-tested on this day with that load at least. */
function testedToday(sheet: Sheet, load: number, day: string): boolean {
  return sheet.cells.value
    .filter((cell): cell is LogCell => cell.kind === 'log')
    .flatMap(({ line_sets }) => line_sets)
    .filter(({ retired }) => retired === '')
    .flatMap(({ pull_tests }) => pull_tests)
    .some(({ date, load: held }) => {
      const read = held === '' ? undefined : readEntry(held, 'N');
      return date === day && read?.ok === true && read.si >= 0.995 * load;
    });
}
