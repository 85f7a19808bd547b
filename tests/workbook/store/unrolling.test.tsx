import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { opening, unrolled, useTurn } from '../../../workbook/store/unrolling';
import { openPage } from '../drawing/page';

const Picture = ({ ready }: { ready: boolean }) => <p>{useTurn(ready) ? 'drawn' : 'waits'}</p>;
const task = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

beforeEach(() => {
  unrolled.value = 1;
});
afterEach(() => {
  unrolled.value = 0;
});

test('pictures of a page that is opening come one a task, and it is open when all have come', async () => {
  const page = openPage();
  page.show([1, 2, 3].map((key) => <Picture key={key} ready />));
  const drawn = (): number => page.body.textContent!.split('drawn').length - 1;
  expect(drawn()).toBe(0);
  unrolled.value = Number.POSITIVE_INFINITY;
  const seen: number[] = [];
  while (drawn() < 3) {
    const before = drawn();
    await task();
    expect(drawn() - before).toBeLessThanOrEqual(1);
    if (drawn() > 0 && drawn() < 3) expect(opening.value).toBe(true);
    seen.push(drawn());
  }
  expect(seen).toEqual(expect.arrayContaining([1, 2, 3]));
  await vi.waitFor(() => expect(opening.value).toBe(false));
});

test('what has nothing to draw keeps nobody waiting, nor does what has gone', async () => {
  const page = openPage();
  page.show([<Picture key={1} ready={false} />, <Picture key={2} ready />]);
  await vi.waitFor(() => expect(page.body.textContent).toBe('waitsdrawn'));
  page.show([<Picture key={3} ready />]);
  page.show([]);
  unrolled.value = Number.POSITIVE_INFINITY;
  await vi.waitFor(() => expect(opening.value).toBe(false));
});

test('on a page that stands a picture is drawn at once', () => {
  unrolled.value = Number.POSITIVE_INFINITY;
  const page = openPage();
  page.show(<Picture ready />);
  expect(page.body.textContent).toBe('drawn');
});
