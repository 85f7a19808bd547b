import type { Sheet } from '../../store/sheet';

/** A file that is dropped anywhere onto the page is opened as if it had been picked. */
export function watchDrops(sheet: Pick<Sheet, 'openFile'>): void {
  const ofFiles = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') ?? false;
  document.addEventListener('dragover', (event) => {
    if (ofFiles(event)) event.preventDefault();
  });
  document.addEventListener('drop', (event) => {
    if (!ofFiles(event)) return;
    event.preventDefault();
    const file = event.dataTransfer?.files[0];
    if (file) void sheet.openFile(file);
  });
}
