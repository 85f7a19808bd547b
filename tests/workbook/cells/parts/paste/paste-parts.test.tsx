import { expect, test, vi } from 'vitest';
import type { PartsCell } from '../../../../../engine/index';
import { PasteParts } from '../../../../../workbook/cells/parts/paste/paste-parts';
import type { Sheet } from '../../../../../workbook/store/sheet';
import { smallDesign } from '../../../../engine/sheet/small';
import type { Page } from '../../../drawing/page';
import { showOf } from '../../show-piece';
import { onStoppedClock } from '../../stopped-clock';

let page: Page;
onStoppedClock((opened) => {
  page = opened;
});

const tableOf = (sheet: Sheet): PartsCell => sheet.cells.value.find((cell) => cell.kind === 'parts') as PartsCell;

const open = (): Promise<Sheet> => showOf(page, smallDesign(), (sheet) => <PasteParts cell={tableOf(sheet)} />);
const all = (selector: string): readonly HTMLElement[] => [...page.body.querySelectorAll<HTMLElement>(selector)];
const words = (selector: string): string[] => all(selector).map((each) => each.textContent!.replaceAll('\u00a0', ' '));
const add = (): HTMLButtonElement => all('button.word').at(-1) as HTMLButtonElement;
async function act(work: () => void): Promise<void> {
  work();
  await vi.advanceTimersByTimeAsync(60);
}
const paste = (text: string): Promise<void> =>
  act(() => {
    const room = page.body.querySelector('textarea')!;
    room.value = text;
    room.dispatchEvent(new window.Event('input', { bubbles: true }));
  });

test('a pasted table comes in whole, and one step of undo takes it back', async () => {
  const sheet = await open();
  const before = sheet.document.value;
  await paste('part;quantity;mass;x;y\nEngine screws;4;1,2;-90;\nSkid;;2,5;480,5;-10');
  expect(words('.separators .aside')).toEqual([
    'The text shows semicolons between fields and a comma for decimals. Choose otherwise if that is wrong.',
  ]);
  expect(words('.paste-preview li')).toEqual([
    'Engine screws: weight, 4 of them; mass 1.2 g; x −90 mm',
    'Skid: weight; mass 2.5 g; x 480.5 mm; y −10 mm',
  ]);
  expect(words('.paste-faults')).toEqual([]);
  expect(add().textContent).toBe('Add these 2 parts');
  await act(() => add().click());
  const rows = tableOf(sheet).rows.slice(-2);
  expect(rows).toEqual([
    {
      name: 'engine_screws',
      title: 'Engine screws',
      shape: 'point',
      fields: { count: '4', mass: '1.2 g', x: '-90 mm' },
    },
    { name: 'skid', title: 'Skid', shape: 'point', fields: { mass: '2.5 g', x: '480.5 mm', y: '-10 mm' } },
  ]);
  expect(words('[role="status"]')).toEqual(['2 parts were added. Undo takes all of it back.']);
  await act(() => sheet.undo());
  expect(sheet.document.value).toEqual(before);
});

test('nothing is taken while one line is wrong', async () => {
  const sheet = await open();
  await paste('part,mass,x\nHorn,4,520\nSkid,,480');
  expect(words('.paste-faults p')).toEqual([
    'Nothing is taken until this is mended, in the text above or in the columns:',
  ]);
  expect(words('.paste-faults li')).toEqual([
    'Line 3: “Skid” has no mass, and no sizes from which one comes. Write a mass, or the sizes and material of a shape.',
  ]);
  expect(add().disabled).toBe(true);
  expect(tableOf(sheet).rows).toEqual(
    (
      smallDesign()
        .sheets.flatMap(({ pieces }) => pieces)
        .find(({ kind }) => kind === 'parts') as PartsCell
    ).rows,
  );
});

test('a part that is there already is told, and may be meant', async () => {
  const sheet = await open();
  const [first] = tableOf(sheet).rows;
  await paste(`part,mass,x\n${first!.title},4,520\nSkid,3,480`);
  expect(words('.aside')).toContain(`“${first!.title}” is in the table already, and stands there twice if taken.`);
  expect(add().disabled).toBe(false);
});

test('what could be meant in two ways waits until a person chooses', async () => {
  await open();
  await paste('part;mass;x\nTank;1,250;-60');
  expect(words('.separators .aside')).toEqual([
    'The text shows semicolons between fields, but not which sign its decimals have. Choose it.',
  ]);
  expect(all('.paste-table')).toEqual([]);
  await act(() =>
    all('.separators input')
      .at(-1)!
      .dispatchEvent(new window.Event('change', { bubbles: true })),
  );
  expect(words('.paste-preview li')).toEqual(['Tank: weight; mass 1.250 g; x −60 mm']);
});

test('a quote that is never closed is told', async () => {
  await open();
  await paste('part,mass,x\n"Horn,4,520');
  // With a quote left open no separator parts the lines.
  expect(words('.separators .aside')).toEqual(['The text doesn’t show what stands between its fields. Choose it.']);
  await act(() => {
    all('.separators input')[0]!.dispatchEvent(new window.Event('change', { bubbles: true }));
  });
  await act(() => {
    all('.separators input')[3]!.dispatchEvent(new window.Event('change', { bubbles: true }));
  });
  expect(words('[role="alert"]')).toEqual([
    'The text can’t be read: line 2 opens a quote that is never closed. Close the quote, or leave the quotes out.',
  ]);
});
