/**
 * Words that stand together (the commands of a piece, a list, a bar) are one stop of Tab: it enters at one of them, and
 * arrow keys, Home and End go along them.
 */
export const along = (enters = false) => ({ 'data-word': '', tabIndex: enters ? 0 : -1 });

/** Listens at what holds the words. */
export function goAlong(event: KeyboardEvent): void {
  if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
  const { target, currentTarget: group } = event;
  if (!(target instanceof HTMLElement) || !(group instanceof HTMLElement) || !target.matches(WORD)) return;
  const words = [...group.querySelectorAll<HTMLElement>(WORD)].filter((word) => word.checkVisibility());
  const to = placeAlong(event.key, words.indexOf(target), words.length);
  if (to === undefined) return;
  event.preventDefault();
  event.stopPropagation();
  words[to]?.focus();
}

const WORD = '[data-word]:not(:disabled)';

/** Which word a key leads to; undefined for a key that leads nowhere. */
function placeAlong(key: string, at: number, count: number): number | undefined {
  if (key === 'ArrowRight' || key === 'ArrowDown') return Math.min(at + 1, count - 1);
  if (key === 'ArrowLeft' || key === 'ArrowUp') return Math.max(at - 1, 0);
  if (key === 'Home') return 0;
  return key === 'End' ? count - 1 : undefined;
}
