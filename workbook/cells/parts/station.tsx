import { useEffect, useRef } from 'preact/hooks';
import { type Part, partFields } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { PartQuantity } from './field';

const AXES = ['x', 'y', 'z'];

/** Where a part is: typed, or picked by a press on the scale drawing. */
export function PartStation({ table, part }: { table: string; part: Part }) {
  const sheet = useSheet();
  const path = `${table}.${part.name}`;
  const picking = sheet.picking.value?.path === path;
  const button = useRef<HTMLButtonElement>(null);
  const hasDrawing = sheet.drawingTitle.value !== undefined;
  useEffect(() => {
    if (!picking) return;
    const leave = (event: KeyboardEvent): void => {
      if (event.key === 'Escape') sheet.picking.value = undefined;
    };
    document.addEventListener('keydown', leave);
    return () => document.removeEventListener('keydown', leave);
  }, [picking, sheet]);
  // The place is taken or left: the hand comes back to where it started.
  const was = useRef(false);
  useEffect(() => {
    if (was.current && !picking) button.current?.focus({ preventScroll: true });
    was.current = picking;
  }, [picking]);
  // A closed part takes no more presses.
  useEffect(
    () => () => {
      if (sheet.picking.peek()?.path === path) sheet.picking.value = undefined;
    },
    [path, sheet],
  );
  return (
    <>
      {partFields(part.shape)
        .filter((field) => AXES.includes(field.name))
        .map((field) => (
          <PartQuantity key={field.name} table={table} part={part} field={field} />
        ))}
      {hasDrawing && (
        <div class="part-pick">
          <button
            ref={button}
            type="button"
            class="word"
            aria-pressed={picking}
            onClick={() => {
              sheet.picking.value = picking ? undefined : { path, title: part.title };
            }}
          >
            {picking ? 'Leave the drawing' : 'Pick on the drawing'}
          </button>
          <p class="aside pick-words" role="status">
            {picking &&
              `Press where the centre of gravity of ${part.title} is: the plan gives station and distance from the centreline, the side view station and height. By keys: arrows move the cross by ${sheet.units() === 'metric' ? '1\u00a0mm, with Shift by 10\u00a0mm' : '0.05\u00a0in, with Shift by 0.5\u00a0in'}, Enter takes the place. Escape leaves it as it was.`}
          </p>
        </div>
      )}
    </>
  );
}
