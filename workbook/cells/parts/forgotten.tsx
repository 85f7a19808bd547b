import { useSignal, useSignalEffect } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { type ForgottenThing, formatQuantity, freeName, type PartsCell, shownUnit } from '../../../engine/index';
import { along } from '../../controls/along';
import { useSheet } from '../../store/context';
import { addingPart } from './edits';
import { takenNames } from './taken';

/** Small things that the table does not name, each with what it would do to the CG; a press adds it. */
export function OftenForgotten({ cell }: { cell: PartsCell }) {
  const sheet = useSheet();
  const open = useSignal(false);
  const things = useSignal<readonly ForgottenThing[] | undefined>(undefined);
  const said = useSignal('');
  const room = useRef<HTMLDetailsElement>(null);
  // Asked again once the hand rests, and only while somebody looks.
  useSignalEffect(() => {
    const revision = sheet.snapshot.value?.revision;
    if (!open.value || sheet.moving.value || revision === undefined) return undefined;
    let left = false;
    void sheet.forgotten(cell.name).then((answer) => {
      if (!left) things.value = answer;
    });
    return () => {
      left = true;
    };
  });
  const add = (thing: ForgottenThing): void => {
    const part = { ...thing.part, name: freeName(thing.part.name, takenNames(sheet, cell)) };
    sheet.edit(() => addingPart(cell, part), part.title);
    said.value = `${part.title} added.`;
    // Its row goes away with the focus in it.
    room.current?.querySelector('summary')?.focus();
  };
  return (
    <details
      ref={room}
      class="forgotten"
      onToggle={(event) => {
        open.value = event.currentTarget.open;
      }}
    >
      <summary {...along()}>What is often forgotten</summary>
      <p class="aside">
        Small things that no part of this table names, with a usual mass and what each would do to the CG of this
        design. Common practice, no source: weigh yours.
      </p>
      {things.value?.length === 0 && <p>Every one of them is in the table.</p>}
      <ul>
        {things.value?.map((thing) => (
          <Thing key={thing.part.name} thing={thing} onAdd={() => add(thing)} />
        ))}
      </ul>
      <p class="unseen" role="status">
        {said.value}
      </p>
    </details>
  );
}

function Thing({ thing, onAdd }: { thing: ForgottenThing; onAdd(): void }) {
  const sheet = useSheet();
  const unit = shownUnit('mm', sheet.units());
  return (
    <li data-forgotten={thing.part.name}>
      <span class="forgotten-title">{thing.part.title}</span>
      <span class="forgotten-mass">{formatQuantity(thing.mass, shownUnit('g', sheet.units()))}</span>
      <span class="forgotten-shift">
        {Number.isNaN(thing.x)
          ? 'where it is, this sheet does not say'
          : `at ${formatQuantity(thing.x, unit)}: CG ${formatQuantity(thing.shiftX, unit, { decimals: unit === 'mm' ? 1 : 3, sign: true })}`}
      </span>
      <button type="button" class="word" onClick={onAdd}>
        Add<span class="unseen"> {thing.part.title}</span>
      </button>
      <span class="aside">
        {thing.about} {thing.source}.
      </span>
    </li>
  );
}
