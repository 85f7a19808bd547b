import { useEffect, useState } from 'preact/hooks';
import { FINGER_ROW, ROW } from './window';

/** Height of a row, px, as what presses it needs it now. */
export function useRowHeight(): number {
  const [finger, setFinger] = useState(false);
  useEffect(() => {
    const query = matchMedia('(pointer: coarse)');
    const look = (): void => setFinger(query.matches);
    look();
    query.addEventListener('change', look);
    return () => query.removeEventListener('change', look);
  }, []);
  return finger ? FINGER_ROW : ROW;
}
