import { expect, test, vi } from 'vitest';
import type { Document, EngineService, WeighingCell } from '../../../engine/index';
import { cellsOf, textAt } from '../../../engine/index';
import { startEngine } from '../../../engine/study/index';
import { WeighingView } from '../../../workbook/cells/weighing/view';
import { SheetContext } from '../../../workbook/store/context';
import { createSheet, type Sheet } from '../../../workbook/store/sheet';
import { library, smallDesign } from '../../engine/sheet/small';
import type { Page } from '../drawing/page';
import { onStoppedClock } from './stopped-clock';

const cell = (change: Partial<WeighingCell> = {}): WeighingCell => ({
  ...{ kind: 'weighing', id: '99', name: 'bench', title: 'Bench', parts: 'parts', order: [] },
  ...{ text: '18 mm', within: '2 mm', ...change },
});
let page: Page;
onStoppedClock((opened) => {
  page = opened;
});
const rest = () => vi.advanceTimersByTimeAsync(60);

const engine = (): EngineService => startEngine(library, { pause: () => Promise.resolve(), now: () => 0 });

/** Draws the bench anew, as the page does after each edit. */
function draw(sheet: Sheet): void {
  const of = cellsOf(sheet.document.value).find((each): each is WeighingCell => each.kind === 'weighing')!;
  page.show(
    <SheetContext.Provider value={sheet}>
      <WeighingView cell={of} />
    </SheetContext.Provider>,
  );
}
async function open(of: WeighingCell): Promise<Sheet> {
  const small = smallDesign();
  const [first] = small.sheets;
  const document: Document = { ...small, sheets: [{ ...first!, pieces: [...first!.pieces, of] }] };
  const ports = { keep: { write() {} }, loadDemo: async () => '', frozen: true, now: () => 0 };
  const sheet = createSheet(document, { engine: engine(), ...ports });
  await rest();
  draw(sheet);
  await rest();
  return sheet;
}
async function weigh(sheet: Sheet, part: string, text: string): Promise<void> {
  sheet.setText(`parts.${part}.weighed`, text);
  await rest();
  draw(sheet);
  await rest();
}
const plain = (element: Element | null | undefined): string =>
  (element?.textContent ?? '').replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim();
const said = (select: string): string => plain(page.body.querySelector(select));
const orderIn = (sheet: Sheet) =>
  cellsOf(sheet.document.value).flatMap((each) => (each.kind === 'weighing' ? each.order : []));

test('the bench says which part is next, and each weighing is one step that can be taken back', async () => {
  const sheet = await open(cell());
  expect(said('[role="status"]')).toBe(
    '0 of 5 parts weighed, 0 % of the mass. Finished, it has 50 % of its fuel on board, as the table says.',
  );
  expect(said('.bench-figures')).toBe('CG when finished12.8 mm ± 7.9 mmwanted18 mm ± 2 mmCG of what is weighed–');
  expect(said('.bench-title')).toBe('engine');
  expect(said('.bench-next .aside')).toBe(
    'Estimated at 210 g. Weighing it takes 68.1 % of what is unsure about the CG: ± 4.5 mm is left. If all the rest is as counted, the CG lies where it is wanted with 194 g.',
  );
  expect(page.body.querySelector('svg')!.getAttribute('aria-label')!.replaceAll('\u00a0', ' ')).toBe(
    'The CG when finished, by estimates alone: 12.8 mm ± 7.9 mm.',
  );
  await weigh(sheet, 'engine', '205');
  expect(orderIn(sheet)).toEqual(['parts.engine']);
  expect(said('.bench-title')).toBe('wing');
  expect(said('[data-bench="parts.engine"]')).toBe('✓engineestimate 210 g, −5 g');
  expect(said('figcaption')).toContain(
    'The CG when finished: 12.8 mm ± 7.9 mm before any part was weighed, 14.3 mm ± 4.5 mm after one.',
  );
  expect([...page.body.querySelectorAll('.bench-steps li')].map(plain)).toHaveLength(2);
  sheet.undo();
  expect(orderIn(sheet)).toEqual([]);
  expect(textAt(sheet.document.value, 'parts.engine.weighed')).toBe('');
});

test('what the rest may weigh is told beside its estimate', async () => {
  const sheet = await open(cell());
  await weigh(sheet, 'engine', '205 g');
  await weigh(sheet, 'fin', '16 g');
  const words = [...page.body.querySelectorAll('.bench > p')].map(plain).find((each) => each.startsWith('What is'));
  expect(words).toBe(
    'What is not weighed yet is estimated at 276 g together; it may weigh 286 g to 308 g for the CG to lie at 18 mm ± 2 mm: as estimated it is too light.',
  );
});

test('a part that was weighed as something else says so, and one press says that it was not', async () => {
  const sheet = await open(cell());
  await weigh(sheet, 'stab', '30 g');
  sheet.setText('tail_stock', 'faced');
  await rest();
  draw(sheet);
  await rest();
  const row = () => page.body.querySelector('[data-bench="parts.stab"]')!;
  expect(plain(row().querySelector('.bench-said'))).toBe(
    'was weighed as “Soft”; counts as re-made, by its estimate It was weighed as it is now: stab',
  );
  row().querySelector('button')!.click();
  await rest();
  draw(sheet);
  await rest();
  expect(row().getAttribute('data-state')).toBe('weighed');
  expect(sheet.value('parts.stab.mass')).toBe(0.03);
});

test('a bench without a table says so', async () => {
  await open(cell({ parts: '' }));
  expect(page.body.querySelector('.bench-rows')).toBeNull();
});
