import { expect, test, vi } from 'vitest';
import { NumberRow } from '../../../workbook/figure/fields';
import { onStoppedClock } from '../cells/stopped-clock';
import type { Page } from '../drawing/page';

let page: Page;
onStoppedClock((opened) => {
  page = opened;
});

test('a number is taken within its limits, with a comma too; what is none is said and not taken', async () => {
  const taken: number[] = [];
  page.show(<NumberRow label="or so many mm" value={85} least={40} most={400} onTake={(mm) => taken.push(mm)} />);
  const type = async (text: string): Promise<string> => {
    const field = page.body.querySelector('input')!;
    field.value = text;
    field.dispatchEvent(new page.body.ownerDocument.defaultView!.Event('change', { bubbles: true }));
    await vi.advanceTimersByTimeAsync(20);
    return page.body.querySelector('[role="alert"]')?.textContent ?? '';
  };
  expect(await type('120,5')).toBe('');
  expect(await type('30')).toBe('“30” can’t be taken. Type a number from 40 to 400.');
  expect(await type('wide')).toBe('“wide” can’t be taken. Type a number from 40 to 400.');
  expect(await type('')).toBe('“” can’t be taken. Type a number from 40 to 400.');
  expect(await type('400')).toBe('');
  expect(taken).toEqual([120.5, 400]);
});
