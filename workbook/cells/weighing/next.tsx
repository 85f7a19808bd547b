import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Part, WeighedPart } from '../../../engine/index';
import { ScaleEntry } from './entry';
import { partSentences, type Written } from './words';

/** The part that deserves the scale next, with room to type what it says. */
export function NextPart({ told, part, written }: { told: WeighedPart; part: Part; written: Written }) {
  const room = useRef<HTMLElement>(null);
  const weighed = useRef(false);
  // One part after another is typed without reaching for anything; on a touch screen the keyboard would stand up again by itself.
  useLayoutEffect(() => {
    if (!weighed.current) return;
    weighed.current = false;
    if (!matchMedia('(pointer: coarse)').matches) room.current?.querySelector('input')?.focus();
  }, [told.path]);
  return (
    <section class="bench-next" aria-label="Next on the scale" ref={room}>
      <p class="bench-word">Next on the scale</p>
      <p class="bench-title">{part.title || part.name}</p>
      <ScaleEntry
        key={told.path}
        path={told.path}
        part={part}
        onWeighed={() => {
          weighed.current = true;
        }}
      />
      <p class="aside">{partSentences(told, written).join(' ')}</p>
    </section>
  );
}
