import { useRef } from 'preact/hooks';
import { along, goAlong } from '../../controls/along';
import { useSheet } from '../../store/context';
import { useDesigns } from '../../store/designs';

/**
 * At the first visit: what is open, and the ways to begin. Where something was changed it goes with the next sheet or design that is shown, so
 * that nothing moves under the hand; by its own words at once.
 */
export function FirstVisit() {
  const sheet = useSheet();
  const designs = useDesigns();
  const shown = `${sheet.shownSheet.value.id} ${sheet.document.value.title}`;
  const first = useRef(shown);
  const changed = designs !== undefined && designs.file.value !== 'untouched';
  const gone = useRef(false);
  if (!changed) first.current = shown;
  gone.current ||= shown !== first.current;
  if (!designs?.welcome.value || gone.current) return null;
  return (
    <section class="first-visit" aria-label="Ways to begin">
      <p>
        <strong>This works out balance, line pull and lap time of a control-line model.</strong> It opens with an
        invented racer: drag a slide and watch.
      </p>
      <p class="commands" role="toolbar" aria-label="Ways to begin" onKeyDown={goAlong}>
        <button type="button" {...along(true)} class="word" onClick={() => (designs.beginning.value = true)}>
          Begin with my model
        </button>
        <button type="button" {...along()} class="word" onClick={() => (sheet.choosing.value = true)}>
          Open a file
        </button>
        <button type="button" {...along()} class="word" onClick={() => (designs.welcome.value = false)}>
          Look around here first
        </button>
      </p>
    </section>
  );
}
