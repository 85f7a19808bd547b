import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import demo from '../../../data/designs/quern-25.tetherwright.json?raw';
import { type EngineService, openText, type Shown } from '../../../engine/index';
import { library, startEngine } from '../../../engine/study/index';
import { verdict } from '../../../workbook/cells/check/verdict';
import { createSheet } from '../../../workbook/store/sheet';

async function openDemo() {
  const opened = openText(demo);
  if (!opened.ok) throw new Error(opened.message);
  const engine: EngineService = startEngine(library, { pause: () => Promise.resolve(), now: () => 0 });
  const asked: (Shown | undefined)[] = [];
  const sheet = createSheet(opened.document, {
    engine: {
      ...engine,
      set(texts, shown) {
        asked.push(shown);
        return engine.set(texts, shown);
      },
    },
    keep: { write() {} },
    loadDemo: async () => '',
    frozen: false,
    now: () => 0,
  });
  const check = (name: string) => sheet.checks.value.find((each) => each.name === name)!;
  const said = (name: string): string => verdict(check(name), sheet.besideOf(check(name)).reader).words;
  await vi.advanceTimersByTimeAsync(1);
  return { sheet, asked, check, said };
}

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

test('while a hand moves the design, what waits is told as it was before and marked so, and the state is not known', async () => {
  const { sheet, check, said } = await openDemo();
  const floor = said('floor_check');
  const clear = said('clear_check');
  sheet.drag('line_length', '16 m');
  await vi.advanceTimersByTimeAsync(20);
  expect(sheet.state.value.words).toBe('working');
  expect(sheet.behind('floor_check')).toBe(true);
  expect(sheet.value('floor_check')).toBeNaN();
  expect(sheet.shown('floor_check')).toBe('–');
  expect(sheet.besideOf(check('floor_check')).behind).toBe(true);
  expect(said('floor_check')).toBe(floor);
  expect(sheet.besideOf(check('clear_check')).behind).toBe(false);
  expect(said('clear_check')).toBe(clear);
  expect(sheet.behind('flight.pull')).toBe(false);
  sheet.rest();
  await vi.advanceTimersByTimeAsync(20);
  expect(sheet.besideOf(check('floor_check')).behind).toBe(false);
  expect(said('floor_check')).not.toBe(floor);
  expect(sheet.state.value.words).not.toBe('working');
});

test('a stop of another sheet that waits stays until the hand rests, and so does one that would come', async () => {
  const { sheet } = await openDemo();
  const stopped = () => sheet.stops.value.map(({ name }) => name);
  expect(stopped()).not.toContain('floor_check');
  sheet.setText('floor_check.low', `${1.02 * sheet.value('floor_check')}`);
  await vi.advanceTimersByTimeAsync(20);
  expect(stopped()).toContain('floor_check');
  const move = async (text: string): Promise<boolean> => {
    sheet.drag('line_length', text);
    await vi.advanceTimersByTimeAsync(20);
    return stopped().includes('floor_check');
  };
  const rest = async (): Promise<boolean> => {
    sheet.rest();
    await vi.advanceTimersByTimeAsync(20);
    return stopped().includes('floor_check');
  };
  expect([await move('16 m'), await rest()]).toEqual([true, false]);
  expect([await move('18.3 m'), await rest()]).toEqual([false, true]);
});

test('a finger that holds still gets what waits, once', async () => {
  const { sheet, asked } = await openDemo();
  sheet.drag('line_length', '16 m');
  await vi.advanceTimersByTimeAsync(100);
  expect(asked).toHaveLength(1);
  expect(asked[0]?.cells).toEqual(sheet.shownSheet.value.pieces.map(({ id }) => id));
  await vi.advanceTimersByTimeAsync(2000);
  expect(asked.slice(1)).toEqual([undefined]);
  expect(sheet.behind('floor_check')).toBe(false);
  expect(sheet.state.value.words).not.toBe('working');
});

test('a sheet that is shown in the middle of a move has its numbers with the next one', async () => {
  const { sheet } = await openDemo();
  sheet.drag('line_length', '16 m');
  await vi.advanceTimersByTimeAsync(20);
  sheet.showSheetOf(sheet.checks.value.find(({ name }) => name === 'floor_check')!.id);
  expect(sheet.shown('floor_check')).toBe('–');
  sheet.drag('line_length', '16.1 m');
  await vi.advanceTimersByTimeAsync(20);
  expect(sheet.behind('floor_check')).toBe(false);
});
