import type { Sheet } from '../../store/sheet';
import { pageKeys } from './table';

/** The keys of the page, and undo and redo by those that every system uses for them, outside of places where text is typed. */
export function watchKeys(sheet: Sheet): void {
  document.addEventListener('keydown', (event) => {
    if (event.defaultPrevented || event.isComposing) return;
    if (isUndo(event)) {
      if (isTyping(event.target)) return;
      event.preventDefault();
      if (event.shiftKey) sheet.redo();
      else sheet.undo();
      return;
    }
    const meant = pageKeys.find((each) => fits(each, event));
    // A dialog has keys of its own.
    if (!meant || document.querySelector('dialog[open]')) return;
    event.preventDefault();
    meant.run(sheet);
  });
}

const isUndo = (event: KeyboardEvent): boolean =>
  event.key.toLowerCase() === 'z' && (event.ctrlKey || event.metaKey) && !event.altKey;

function isTyping(target: EventTarget | null): boolean {
  if (target instanceof HTMLElement && target.isContentEditable) return true;
  return target instanceof HTMLTextAreaElement || (target instanceof HTMLInputElement && target.type === 'text');
}

const fits = ({ key, alt = false, shift = false }: (typeof pageKeys)[number], event: KeyboardEvent): boolean =>
  event.key === key && event.altKey === alt && event.shiftKey === shift && !event.ctrlKey && !event.metaKey;
