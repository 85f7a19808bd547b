import { afterEach, expect, test, vi } from 'vitest';
import type { Cell, Document, EngineService, GuessCell } from '../../../engine/index';
import { cellsOf } from '../../../engine/index';
import { startEngine } from '../../../engine/study/index';
import { GuessView } from '../../../workbook/cells/guess/view';
import { fetchGuessPicture } from '../../../workbook/charts/index';
import { classView } from '../../../workbook/store/class-view';
import { SheetContext } from '../../../workbook/store/context';
import { printing } from '../../../workbook/store/printing';
import { createSheet, type Sheet } from '../../../workbook/store/sheet';
import { documentOf, formula, library, variable, variables } from '../../engine/sheet/small';
import type { Page } from '../drawing/page';
import { onStoppedClock } from './stopped-clock';

const guess = (change: Partial<GuessCell> = {}): GuessCell => ({
  ...{ kind: 'guess', id: 'g', name: 'pull_guess', title: 'Pull', question: 'Reach is {reach}. How hard is the pull?' },
  ...{ way: 'number', of: 'pull', unit: '', options: [], series: '', why: 'It is 4 N for each metre of {reach}.' },
  ...{ try_this: 'Make the reach longer.', instructor: 'Most say too little.', guesses: [], ...change },
});
const around: readonly Cell[] = [
  variables('set', variable('reach', 'm', '2 m', '1 m', '3 m')),
  formula('lines', { pull: '4 N × reach / (1 m)', times: 'pull / (2 N)' }),
  {
    ...{ kind: 'trial_series', id: 's', name: 'along_reach', title: 'Along reach', wanted: ['pull'] },
    axes: [{ of: 'reach', low: '', high: '', count: 5 }],
  },
];

let page: Page;
onStoppedClock((opened) => {
  page = opened;
});
afterEach(() => {
  classView.value = false;
  printing.value = false;
});
const rest = () => vi.advanceTimersByTimeAsync(60);
const engine = (): EngineService => startEngine(library, { pause: () => Promise.resolve(), now: () => 0 });

function draw(sheet: Sheet): void {
  const of = cellsOf(sheet.document.value).find((each): each is GuessCell => each.kind === 'guess')!;
  page.show(
    <SheetContext.Provider value={sheet}>
      <GuessView cell={of} />
    </SheetContext.Provider>,
  );
}
async function open(of: GuessCell): Promise<Sheet> {
  const document: Document = documentOf([...around, of]);
  const ports = { keep: { write() {} }, loadDemo: async () => '', frozen: true, now: () => 0 };
  const sheet = createSheet(document, { engine: engine(), ...ports });
  await rest();
  draw(sheet);
  await rest();
  return sheet;
}
async function again(sheet: Sheet): Promise<void> {
  await rest();
  draw(sheet);
  await rest();
}
const plain = (element: Element | null | undefined): string =>
  (element?.textContent ?? '').replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim();
const said = (select: string): string => plain(page.body.querySelector(select));
const cellIn = (sheet: Sheet) =>
  cellsOf(sheet.document.value).find((each): each is GuessCell => each.kind === 'guess')!;
const type = async (select: string, text: string): Promise<void> => {
  const field = page.body.querySelector<HTMLInputElement>(select)!;
  field.value = text;
  field.dispatchEvent(new window.Event('input', { bubbles: true }));
  await rest();
};
const press = (words: string): void =>
  [...page.body.querySelectorAll('button')].find((button) => plain(button).startsWith(words))!.click();
const submit = (): void => {
  page.body.querySelector('form')!.dispatchEvent(new window.Event('submit', { bubbles: true, cancelable: true }));
};

test('a number is guessed in any unit, then the design answers, with why and what to try', async () => {
  const sheet = await open(guess());
  expect(said('.prose')).toBe('Reach is 2 m. How hard is the pull?');
  expect(said('.guess-entry span')).toBe('Your guess, in N');
  expect(page.body.textContent).not.toContain('8 N');
  await type('#guess-g', '1 kgf');
  submit();
  await again(sheet);
  expect(cellIn(sheet)).toMatchObject({ shown: true, guesses: [{ by: '', text: '1 kgf' }] });
  expect(said('.guess-result')).toBe('You guessed 9.8 N. It is 8 N.');
  expect([...page.body.querySelectorAll('.guess-answer h3, .guess-answer .prose')].map(plain)).toEqual([
    'Why',
    'It is 4 N for each metre of 2 m.',
    'Try this on your model',
    'Make the reach longer.',
  ]);
  expect(page.body.textContent).not.toContain('Most say too little.');
  sheet.undo();
  expect(cellIn(sheet).guesses).toEqual([]);
});

test('without a guess the answer is not shown, and what cannot be read says why', async () => {
  const sheet = await open(guess());
  submit();
  await again(sheet);
  expect(said('.form-problem')).toBe('Type what you think it is. A wrong guess is a good one too.');
  await type('#guess-g', 'pull');
  submit();
  await again(sheet);
  expect(said('.form-problem')).toBe('“pull” is no number. Type one, such as 12 N.');
  await type('#guess-g', '3 g');
  submit();
  await again(sheet);
  expect(said('.form-problem')).not.toBe('');
  expect(cellIn(sheet).shown).toBeUndefined();
});

test('a class guesses one after another under names, covered until the answer comes, then as a strip', async () => {
  const sheet = await open(guess());
  classView.value = true;
  await again(sheet);
  expect(said('.guess-instructor')).toBe('For the instructor Most say too little.'.replace('or M', 'orM'));
  for (const [by, text] of [
    ['Ann', '5 N'],
    ['', '7'],
    ['Ben', '12 N'],
  ] as const) {
    await type('.guess-entry input', by);
    await type('#guess-g', text);
    submit();
    await again(sheet);
  }
  expect(cellIn(sheet).guesses).toEqual([
    { by: 'Ann', text: '5 N' },
    { by: '2', text: '7' },
    { by: 'Ben', text: '12 N' },
  ]);
  expect(said('.guess-taken p')).toBe('3 guesses are in.');
  expect(said('.guess-taken')).not.toContain('12 N');
  await type('.guess-entry input', 'Ann');
  await type('#guess-g', '6 N');
  submit();
  await again(sheet);
  expect(said('.form-problem')).toBe('Ann has guessed already. Type another name.');
  await type('#guess-g', '');
  press('Show the answer');
  await again(sheet);
  expect(said('.guess-result')).toBe('It is 8 N. Nearest: 2 with 7 N.');
  const rows = [...page.body.querySelectorAll('[data-guess]')];
  expect(rows.map((row) => row.getAttribute('data-guess'))).toEqual(['Ann', '2', 'Ben']);
  expect(page.body.querySelector('.guess-strip svg')!.getAttribute('aria-label')!.replaceAll('\u00a0', ' ')).toBe(
    'The answer is 8 N. Ann: 5 N. 2: 7 N. Ben: 12 N.',
  );
  press('Guess again');
  await again(sheet);
  expect(cellIn(sheet)).toMatchObject({ guesses: [] });
  expect(cellIn(sheet).shown).toBeUndefined();
});

test('of answers to choose from the one within whose ends the number lies is right', async () => {
  const options = [
    { words: 'twice', low: '1.5', high: '2.5' },
    { words: 'four times', low: '3', high: '5' },
  ];
  const sheet = await open(guess({ way: 'choice', of: 'times', options }));
  const [first] = page.body.querySelectorAll<HTMLInputElement>('input[type=radio]');
  first!.dispatchEvent(new window.Event('change', { bubbles: true }));
  await rest();
  submit();
  await again(sheet);
  expect(said('.guess-result')).toBe('It is: four times.');
  expect([...page.body.querySelectorAll('.guess-choices li')].map(plain)).toEqual([
    'twiceyour guess',
    '✓four times (the answer)',
  ]);
  sheet.setText('reach', '1 m');
  await again(sheet);
  expect(said('.guess-result')).toBe('Yes: twice.');
});

test('a line is drawn by keys on the chart, and the answer is drawn beside it', async () => {
  await fetchGuessPicture();
  printing.value = true;
  const sheet = await open(guess({ way: 'line', series: 'along_reach' }));
  await again(sheet);
  const points = () => [...page.body.querySelectorAll('[role=slider]')];
  expect(points().map((point) => point.getAttribute('aria-valuetext')!.replaceAll('\u00a0', ' '))).toEqual(
    Array(9).fill('8 N'),
  );
  expect(points()[2]!.getAttribute('aria-label')!.replaceAll('\u00a0', ' ')).toBe(
    'Pull at reach 1.5 m'.replace('Pull', 'pull'),
  );
  submit();
  await again(sheet);
  expect(said('.form-problem')).toBe('Draw the line first: move one of its points at least.');
  const key = async (k: number, name: string): Promise<void> => {
    const event = new window.Event('keydown', { bubbles: true, cancelable: true });
    Object.assign(event, { key: name });
    points()[k]!.dispatchEvent(event);
    await rest();
  };
  await key(0, 'PageDown');
  await key(8, 'ArrowUp');
  expect(points()[0]!.getAttribute('aria-valuetext')).not.toBe('8\u00a0N');
  expect(page.body.querySelector('[data-line=answer]')).toBeNull();
  submit();
  await again(sheet);
  expect(cellIn(sheet).guesses[0]!.line).toEqual([5.5, 8, 8, 8, 8, 8, 8, 8, 8.5]);
  expect(said('.guess-result')).toBe('The answer rises from 4 N to 12 N. Your line rises from 5.5 N to 8.5 N.');
  expect(page.body.querySelector('[data-line=answer]')).not.toBeNull();
  expect(points()).toEqual([]);
});
