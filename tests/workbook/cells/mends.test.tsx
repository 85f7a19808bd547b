import { expect, test, vi } from 'vitest';
import type { MendsCell } from '../../../engine/index';
import { MendsView } from '../../../workbook/cells/mends/view';
import type { Sheet } from '../../../workbook/store/sheet';
import type { Page } from '../drawing/page';
import { showOf, withPiece } from './show-piece';
import { onStoppedClock } from './stopped-clock';

const cell = (change: Partial<MendsCell> = {}): MendsCell => ({
  ...{ kind: 'what_mends', id: '99', name: 'mended', title: 'Mended', of: 'parts.x', way: 'to', text: '18 mm' },
  ...{ wanted: ['parts.mass'], ...change },
});
let page: Page;
onStoppedClock((opened) => {
  page = opened;
});

async function open(of: MendsCell): Promise<Sheet> {
  return showOf(page, withPiece(of), () => <MendsView cell={of} />);
}
const plain = (element: Element | null): string => (element?.textContent ?? '').replaceAll('\u00a0', ' ');
const status = (): string => plain(page.body.querySelector('[role="status"]'));

test('every change that mends it stands under what it costs, and one press makes a variant of it', async () => {
  const sheet = await open(cell());
  expect(status()).toBe('CG station is 12.8 mm; wanted is 18 mm.');
  const rows = [...page.body.querySelectorAll('tbody tr')].map((row) => plain(row.querySelector('th')));
  expect(rows).toMatchInlineSnapshot(`
    [
      "Costs no weight",
      "engine_station: −137 mm instead of −150 mm",
      "A lighter part",
      "engine: weighs 193.7 g instead of 210 g",
      "Weight added",
      "tip_weight: 86 g instead of 21 gbeyond its travel by 36 g",
    ]
  `);
  [...page.body.querySelectorAll('button')].find((each) => each.textContent!.startsWith('Make a variant'))!.click();
  await vi.advanceTimersByTimeAsync(60);
  expect(sheet.document.value.variants).toEqual([
    {
      name: expect.stringMatching(/^Engine_station: −1\d\d/),
      changes: { engine_station: expect.stringMatching(/^-1\d\d/) },
    },
  ]);
});

test('what goes beyond its travel says by how much, and what is there already says so', async () => {
  await open(cell({ text: '24 mm' }));
  expect(plain(page.body.querySelector('[data-mend="engine_station"] .variants-apart'))).toMatch(
    /^beyond its travel by \d+(\.\d+)? mm$/,
  );
  page.show(null);
  await open(cell({ way: 'least', text: '2 mm' }));
  expect(status()).toBe('CG station is 12.8 mm; wanted is at least 2 mm. It is there already.');
});
