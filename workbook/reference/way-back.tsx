import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { BACK, DESIGN_PAGE, leftAt } from '../store/left-at';

/** Leads to the page of the design, where it was left. */
export function WayBack() {
  const left = useSignal(leftAt());
  useEffect(() => {
    // Another link of the design has led here since.
    const follow = (): void => {
      left.value = leftAt();
    };
    window.addEventListener('storage', follow);
    return () => window.removeEventListener('storage', follow);
  }, [left]);
  const place = left.value;
  return (
    <a class="word" href={place ? `./${BACK}` : './'} target={DESIGN_PAGE}>
      {place ? `Back to ${place.design}, ${place.from}` : 'To the design'}
    </a>
  );
}
