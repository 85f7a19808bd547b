import { DrawingView } from '../../cells/index';
import { useSheet } from '../../store/context';

/** Figures on the strip of a phone: the first of the sheet's list. */
const FIGURES = 3;

/** On a phone: the drawing at the top of the screen with three figures under it. */
export function Strip() {
  const sheet = useSheet();
  const title = sheet.drawingTitle.value;
  return (
    <aside class="strip" aria-label="Drawing and three figures">
      {title !== undefined && <DrawingView title={title} arrangement="strip" />}
      <dl>
        {sheet
          .part('figures')
          .slice(0, FIGURES)
          .map((path) => (
            <div key={path}>
              <dt>{sheet.name(path)?.title ?? path}</dt>
              <dd data-strip-figure={path}>{sheet.shown(path)}</dd>
            </div>
          ))}
      </dl>
    </aside>
  );
}
