import { bound, type SweepProgress } from '../../../engine/index';

const SECOND = 1000;
const MINUTE = 60;

/** How far a sweep has come, in words: "1 200 of 10 000 designs, about 3 s left". */
export function progressWords(progress: SweepProgress | undefined): string {
  if (!progress) return 'not yet computed';
  const { done, total, state, left } = progress;
  const count = `${spaced(done)} of ${spaced(total)} designs`;
  if (state === 'stopped') return `stopped at ${count}`;
  return state === 'running' && left !== undefined ? `${count}, about ${timeWords(left)} left` : count;
}

function timeWords(ms: number): string {
  const seconds = Math.max(1, Math.round(ms / SECOND));
  return seconds < 2 * MINUTE ? bound(String(seconds), 's') : bound(String(Math.round(seconds / MINUTE)), 'min');
}

/** Groups of three digits from five digits up, kept on one line (ISO 80000-1). */
export function spaced(count: number): string {
  const digits = String(count);
  return digits.length < 5 ? digits : digits.replace(/\B(?=(\d{3})+$)/g, '\u202f');
}
