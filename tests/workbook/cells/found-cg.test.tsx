import { readFileSync } from 'node:fs';
import { expect, test, vi } from 'vitest';
import { type BlockCell, cellsOf, type Document, openText } from '../../../engine/index';
import { library, startEngine } from '../../../engine/study/index';
import { FoundCg } from '../../../workbook/cells/block/found-cg';
import { SheetContext } from '../../../workbook/store/context';
import { createSheet } from '../../../workbook/store/sheet';
import { onOneSheet } from '../../engine/sheet/one-sheet';
import type { Page } from '../drawing/page';
import { onStoppedClock } from './stopped-clock';

let page: Page;
onStoppedClock((opened) => {
  page = opened;
});
const opened = openText(readFileSync(new URL('../../designs/quern.tetherwright.json', import.meta.url), 'utf8'));
if (!opened.ok) throw new Error(opened.message);
const quern = opened.document;

const piece: BlockCell = {
  kind: 'model',
  id: 'f1',
  name: 'found_cg',
  title: 'Find the CG',
  of: 'found_cg',
  fields: {},
};
const rest = () => vi.advanceTimersByTimeAsync(60);
const plain = (element: Element | null): string => (element?.textContent ?? '').replaceAll('\u00a0', ' ');
const said = (): string => plain(page.body.querySelector('[role="status"]'));

async function open() {
  const document: Document = { ...quern, sheets: onOneSheet([...cellsOf(quern), piece]) };
  const engine = startEngine(library, { pause: () => Promise.resolve(), now: () => 0 });
  const ports = { keep: { write() {} }, loadDemo: async () => '', frozen: true, now: () => 0 };
  const sheet = createSheet(document, { engine, ...ports });
  await rest();
  page.show(
    <SheetContext.Provider value={sheet}>
      <FoundCg cell={piece} />
    </SheetContext.Provider>,
  );
  await rest();
  return sheet;
}

test('what is found stands beside the table, and what the table may lack is a press away', async () => {
  const sheet = await open();
  expect(said()).toBe(
    'Nothing tells the CG yet. Type what you find in any one of these ways; each further one makes it surer.',
  );
  expect(page.body.querySelector('ol')).toBeNull();
  sheet.setText('found_cg.finger', '60 mm');
  await rest();
  expect(said()).toMatch(
    /^The CG is at 60 mm, ± 2 mm; the table has it at 49\.3 mm\. It lies 10\.7 mm aft of the table’s, where ± [\d.]+ mm is unsure\. [\d.]+ g at \d+ mm that are missing in the table would explain it\. Put the whole model on the scale, and it can be told how much and where\.$/,
  );
  const culprits = () =>
    [...page.body.querySelectorAll('[data-culprit]')].map((row) => row.getAttribute('data-culprit'));
  const [first, ...others] = culprits();
  expect(others.length).toBeLessThanOrEqual(2);
  page.body.querySelector<HTMLButtonElement>('[data-culprit] button')!.click();
  await rest();
  const parts = cellsOf(sheet.document.value).flatMap((cell) => (cell.kind === 'parts' ? cell.rows : []));
  expect(parts.map(({ name }) => name)).toContain(first);
  expect(culprits()).not.toContain(first);
  expect(sheet.undoSays.value).toBe(parts.find(({ name }) => name === first)!.title);
});
