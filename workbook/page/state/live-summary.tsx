import { useSignal, useSignalEffect } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { verdict } from '../../cells/index';
import { useSheet } from '../../store/context';
import type { Sheet } from '../../store/sheet';
import { changesSpoken, type Standing } from './spoken';

/** How long everything has to rest before it's read aloud, ms: strokes of an arrow key come faster. */
const REST = 800;

/** For those who hear the sheet: once the hand rests, what the edit has changed, said one time. */
export function LiveSummary() {
  const sheet = useSheet();
  const said = useSignal('');
  const before = useRef<Standing | undefined>(undefined);
  useSignalEffect(() => {
    const now = standing(sheet);
    if (sheet.moving.value || sheet.state.value.kind === 'working') return undefined;
    if (!before.current) {
      before.current = now;
      return undefined;
    }
    const timer = setTimeout(() => {
      const words = changesSpoken(before.current ?? now, now);
      before.current = now;
      if (words !== '') said.value = words;
    }, REST);
    return () => clearTimeout(timer);
  });
  return (
    <p class="unseen" role="status" data-spoken>
      {said.value}
    </p>
  );
}

function standing(sheet: Sheet): Standing {
  return {
    figures: sheet.part('figures').map((path) => ({
      path,
      title: sheet.name(path)?.title ?? path,
      words: sheet.shown(path),
    })),
    // That a value moves within its limits is read with the figures; a check speaks when it breaks or holds again.
    checks: sheet.checks.value.map((check) => {
      const { kind, words } = verdict(check, sheet);
      return { path: check.name, title: check.title, words: kind === 'holds' ? 'within its limits' : words };
    }),
  };
}
