import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { type Difference, differencesOf, movedSince } from '../../../engine/index';
import { along } from '../../controls/along';
import { goTo } from '../../controls/go-to';
import { useSheet } from '../../store/context';

/** What differs from the baseline, line by line, each with a way back. */
export function BaselineList() {
  const sheet = useSheet();
  const open = useSignal(false);
  if (sheet.baselineState.value !== 'moved') return null;
  return (
    <details
      class="baseline-list"
      onToggle={(event) => {
        open.value = event.currentTarget.open;
      }}
    >
      <summary {...along()}>What differs from the baseline</summary>
      {open.value && <Differences />}
    </details>
  );
}

function Differences() {
  const sheet = useSheet();
  const room = useRef<HTMLUListElement>(null);
  const differences = differencesOf(sheet.document.value);
  const { removed, added } = movedSince(sheet.document.value);
  return (
    <>
      <ul ref={room}>
        {differences.map((each) => (
          <Line
            key={each.path}
            difference={each}
            onReturn={() => {
              sheet.setText(each.path, each.before);
              // The line goes away with the focus in it.
              room.current?.closest('details')?.querySelector('summary')?.focus();
            }}
          />
        ))}
      </ul>
      {removed.length > 0 && <p data-removed>Removed since: {removed.join(', ')}. The baseline still has it.</p>}
      {added.length > 0 && <p data-added>Added since: {added.join(', ')}. The baseline is without.</p>}
    </>
  );
}

function Line({ difference, onReturn }: { difference: Difference; onReturn(): void }) {
  const sheet = useSheet();
  const { path, before, now } = difference;
  const cell = sheet.cellHolding(path) ?? '';
  const title = sheet.placeTitle({ cell, path });
  const words = (text: string): string => (text === '' ? 'blank' : (sheet.optionTitle(path, text) ?? text));
  return (
    <li data-difference={path}>
      <button type="button" class="word" onClick={() => goTo(sheet, { cell, path })}>
        {title}
      </button>
      <span class="difference-texts">
        <span class="unseen">then </span>
        <span class="then">{words(before)}</span>
        <span aria-hidden="true"> → </span>
        <span class="unseen">, now </span>
        {words(now)}
      </span>
      <button type="button" class="word quiet" onClick={onReturn}>
        Put back<span class="unseen"> {title}</span>
      </button>
    </li>
  );
}
