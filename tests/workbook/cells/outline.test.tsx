import { readFileSync } from 'node:fs';
import { expect, test, vi } from 'vitest';
import { type BlockCell, type Cell, cellsOf, type Document, openText, type UnitSet } from '../../../engine/index';
import { library, startEngine } from '../../../engine/study/index';
import { cornersPasted } from '../../../workbook/cells/block/outline-start';
import { BlockView } from '../../../workbook/cells/block/view';
import { SheetContext, useSheet } from '../../../workbook/store/context';
import { createSheet, type Sheet } from '../../../workbook/store/sheet';
import { onOneSheet } from '../../engine/sheet/one-sheet';
import type { Page } from '../drawing/page';
import { onStoppedClock } from './stopped-clock';

let page: Page;
onStoppedClock((opened) => {
  page = opened;
});
const opened = openText(readFileSync(new URL('../../designs/quern.tetherwright.json', import.meta.url), 'utf8'));
if (!opened.ok) throw new Error(opened.message);
const STANDS = ['air', 'wing', 'tail', 'body'];
/** The wing and fuselage of the Quern with what they read, and nothing that flies. */
const quern: Document = {
  ...opened.document,
  sheets: onOneSheet(
    cellsOf(opened.document).flatMap((cell) =>
      cell.kind === 'model' && STANDS.includes(cell.name) ? { ...cell, fields: {} } : [],
    ),
  ),
  figures: [],
};
const rest = () => vi.advanceTimersByTimeAsync(60);

function Piece({ name }: { name: string }) {
  const cell = useSheet().cells.value.find((each: Cell) => each.name === name) as BlockCell;
  return <BlockView cell={cell} />;
}

async function open(name: string): Promise<Sheet> {
  const engine = startEngine(library, { pause: () => Promise.resolve(), now: () => 0 });
  const ports = { keep: { write() {} }, loadDemo: async () => '', frozen: true, now: () => 0 };
  const sheet = createSheet(quern, { engine, ...ports });
  await rest();
  page.show(
    <SheetContext.Provider value={sheet}>
      <Piece name={name} />
    </SheetContext.Provider>,
  );
  await rest();
  return sheet;
}
const all = (selector: string): HTMLElement[] => [...page.body.querySelectorAll<HTMLElement>(selector)];
const press = async (words: string): Promise<void> => {
  all('button')
    .find((each) => each.textContent?.trim() === words)!
    .click();
  await rest();
};
const shown = (): string[] =>
  all('.corners input').map((each) => (each as HTMLInputElement).value.replaceAll('\u00a0', ' '));
const text = (sheet: Sheet, path: string): string => {
  const [name, field] = path.split('.') as [string, string];
  return (cellsOf(sheet.document.value).find((cell) => cell.name === name) as BlockCell).fields[field] ?? '';
};

test('a side outline begins with what stands, hides what it replaces, and goes with its corners', async () => {
  const sheet = await open('body');
  const area = sheet.value('body.side_area');
  expect(all('[data-path="body.nose_x"]')).toHaveLength(1);
  await press('Begin with the outline that stands now');
  expect(shown()).toHaveLength(16);
  expect(sheet.value('body.side_area')).toBeCloseTo(area, 6);
  expect(all('[data-path="body.nose_x"]')).toHaveLength(0);
  expect(all('[data-path="body.width"]')).toHaveLength(1);
  await press('Remove corner 8');
  expect(shown()).toHaveLength(14);
  await press('Add a corner behind corner 7');
  expect(shown().slice(12, 14)).toEqual(shown().slice(14, 16));
  sheet.undo();
  sheet.undo();
  await rest();
  expect(shown()).toHaveLength(16);
  await press('Remove the outline');
  expect(text(sheet, 'body.side_outline')).toBe('');
  expect(sheet.value('body.side_area')).toBe(area);
  expect(sheet.undoSays.value).toBe('side outline of Fuselage and drag');
});

test('corners are pasted many at once, from the row of the entry on, with the unit of the entries', async () => {
  const sheet = await open('wing');
  const outline = sheet.blockNamed('wing')!.outlines[0]!;
  const corners = [
    ['0 mm', '500 mm'],
    ['200 mm', '500 mm'],
  ];
  const pasted = (text: string, set: UnitSet = 'metric') => cornersPasted(corners, 1, text, outline, set);
  expect(pasted('10\t400\n4 cm; 515\n')).toEqual([
    ['0 mm', '500 mm'],
    ['10 mm', '400 mm'],
    ['4 cm', '515 mm'],
  ]);
  expect(pasted('1/2; 20', 'inch_pound')![1]).toEqual(['1/2 in', '20 in']);
  expect(pasted('12 mm')).toBeUndefined();
});

test('a corner that can’t be read says so under the table', async () => {
  const sheet = await open('body');
  sheet.setText('body.side_outline', '0 mm; 0 mm\n100 mm; 3 g\n0 mm; 10 mm');
  await rest();
  expect(
    all('.fault-flag')
      .map((each) => each.textContent)
      .join(),
  ).toMatch(/corner 2, height/);
});
