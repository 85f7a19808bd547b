import { DrawingView, standingDrawing } from '../../cells/index';
import { Mark } from '../../controls/mark';
import { useSheet } from '../../store/context';

/** Figures on the strip of a phone: the first of the sheet's list. */
const FIGURES = 3;

/** On a phone: the drawing at the top of the screen with three figures and the number of stops. */
export function Strip() {
  const sheet = useSheet();
  const drawing = standingDrawing(sheet.cells.value);
  const stops = sheet.stops.value.length + sheet.breaches.value.length;
  return (
    <aside class="strip" aria-label="Drawing and three figures">
      {drawing && <DrawingView cell={drawing} arrangement="strip" />}
      {stops > 0 && (
        <p class="strip-stops">
          <Mark holds={false} />
          {stops === 1 ? '1 stop' : `${stops} stops`}
        </p>
      )}
      <dl>
        {sheet
          .part('figures')
          .slice(0, FIGURES)
          .map((path) => (
            <div key={path}>
              <dt>{sheet.name(path)?.title ?? path}</dt>
              <dd class={sheet.under(path) ? 'too-low' : ''} data-strip-figure={path}>
                {sheet.shown(path)}
              </dd>
            </div>
          ))}
      </dl>
    </aside>
  );
}
