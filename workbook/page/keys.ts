import type { Sheet } from '../store/sheet';

/** Undo and redo by the keys that every system uses for them, outside of places where text is typed. */
export function watchKeys(sheet: Pick<Sheet, 'undo' | 'redo'>): void {
  document.addEventListener('keydown', (event) => {
    if (event.key.toLowerCase() !== 'z' || !(event.ctrlKey || event.metaKey) || event.altKey) return;
    const target = event.target;
    if (target instanceof HTMLElement && target.isContentEditable) return;
    if (target instanceof HTMLTextAreaElement || (target instanceof HTMLInputElement && target.type === 'text')) return;
    event.preventDefault();
    if (event.shiftKey) sheet.redo();
    else sheet.undo();
  });
}
