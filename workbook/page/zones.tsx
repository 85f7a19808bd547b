import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';

/** Letters of the zones down the sides of a sheet, without I and O (ISO 5457). */
const LETTERS = 'ABCDEFGHJKLMNPQRSTUVWXYZ';
const ACROSS = 8;
/** Height of a zone on the screen, px, before they are made equal. */
const HEIGHT = 240;

/** Numbers along the upper and lower edge, letters down both sides, so that a place on the sheet can be named. */
export function Zones() {
  const edge = useRef<HTMLDivElement>(null);
  const down = useSignal(4);
  useEffect(() => {
    if (!edge.current) return;
    const observer = new ResizeObserver(([entry]) => {
      const height = entry?.contentRect.height ?? 0;
      down.value = Math.min(LETTERS.length, Math.max(2, Math.round(height / HEIGHT)));
    });
    observer.observe(edge.current);
    return () => observer.disconnect();
  }, [down]);
  const numbers = Array.from({ length: ACROSS }, (_, k) => <span key={k}>{k + 1}</span>);
  const letters = LETTERS.slice(0, down.value)
    .split('')
    .map((letter) => <span key={letter}>{letter}</span>);
  return (
    <div class="zones" aria-hidden="true">
      <div class="zone-row top">{numbers}</div>
      <div class="zone-row bottom">{numbers}</div>
      <div class="zone-column left" ref={edge}>
        {letters}
      </div>
      <div class="zone-column right">{letters}</div>
    </div>
  );
}
