import { along, goAlong } from '../../controls/along';
import { useSheet } from '../../store/context';
import { useDesigns } from '../../store/designs';

/** At the first visit: what is open, and the ways to begin. It goes as soon as something is changed or chosen. */
export function FirstVisit() {
  const sheet = useSheet();
  const designs = useDesigns();
  if (!designs?.welcome.value || designs.file.value !== 'untouched') return null;
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
