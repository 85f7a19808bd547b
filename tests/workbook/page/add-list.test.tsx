import { expect, test, vi } from 'vitest';
import { startEngine } from '../../../engine/study/index';
import { AddList } from '../../../workbook/page/add-list';
import { SheetContext } from '../../../workbook/store/context';
import { createSheet } from '../../../workbook/store/sheet';
import { library, smallDesign } from '../../engine/sheet/small';
import { onStoppedClock } from '../cells/stopped-clock';
import type { Page } from '../drawing/page';

let page: Page;
onStoppedClock((opened) => {
  page = opened;
});

test('what can be added is found by a few letters of its name or of what it is for, and Enter adds the first', async () => {
  const sheet = createSheet(smallDesign(), {
    engine: startEngine(library, { pause: () => Promise.resolve(), now: () => 0 }),
    keep: { write() {} },
    loadDemo: async () => '',
    frozen: true,
    now: () => 0,
  });
  await vi.advanceTimersByTimeAsync(60);
  // This light page has no dialogs.
  Object.assign(window.HTMLElement.prototype, { showModal() {}, close() {} });
  page.show(
    <SheetContext.Provider value={sheet}>
      <AddList at={0} />
    </SheetContext.Provider>,
  );
  const words = (): string[] => [...page.body.querySelectorAll('li button')].map(({ textContent }) => textContent!);
  const all = words();
  expect(all.length).toBeGreaterThan(15);
  const find = page.body.querySelector<HTMLInputElement>('input')!;
  const type = async (text: string): Promise<void> => {
    find.value = text;
    find.dispatchEvent(new window.Event('input', { bubbles: true }));
    await vi.advanceTimersByTimeAsync(60);
  };
  await type('comprom');
  expect(words()).toEqual(['Best compromises']);
  await type('zzz');
  expect(words()).toEqual([]);
  expect(page.body.querySelector('[role="status"]')!.textContent).toBe(
    'Nothing of that name can be added. Write another word.',
  );
  await type('');
  expect(words()).toEqual(all);
  const before = sheet.cells.value.length;
  await type('note');
  find.dispatchEvent(Object.assign(new window.Event('keydown', { bubbles: true, cancelable: true }), { key: 'Enter' }));
  expect(sheet.cells.value.length).toBe(before + 1);
  expect(sheet.cells.value.some(({ kind }) => kind === 'note')).toBe(true);
});
