import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { plotAlong, readAlong } from '../../../workbook/charts/along/layout';
import { AlongChart } from '../../../workbook/charts/along/view';
import { alongReadings, alongSentences, alongTable } from '../../../workbook/charts/along/words';
import type { TraceChartProps } from '../../../workbook/charts/frame/props';
import { layOutPlot } from '../../../workbook/charts/line/layout';
import { openPage, type Page } from '../drawing/page';
import { alongProps, drainTrace, runTrace } from './along-data';

let page: Page;
const warned = vi.fn();
beforeEach(() => {
  page = openPage();
  warned.mockReset();
  vi.spyOn(console, 'warn').mockImplementation(warned);
});
afterEach(() => expect(warned).not.toHaveBeenCalled());

function drawn(props: TraceChartProps, width = 560) {
  const along = readAlong(props);
  if (typeof along === 'string') throw new Error(along);
  const chart = layOutPlot(plotAlong(along, props), width);
  const all = { of: props, data: along, chart };
  return {
    chart,
    caption: alongSentences(all).filter((sentence) => sentence !== ''),
    readings: alongReadings(all),
    table: alongTable(along, props.trace),
  };
}

test('quantities of one unit stand in one panel, each with its name at its end', () => {
  const { chart } = drawn(alongProps());
  expect(chart.panels.map(({ panel }) => panel.title)).toEqual(['Line pull and side force, N', 'Speed, m/s']);
  expect(chart.panels.map(({ ends }) => ends.map(({ lines }) => lines.join(' ')))).toEqual([
    ['Line pull', 'Side force'],
    [],
  ]);
});

test('what runs down is drawn from the left to the right all the same', () => {
  const { chart } = drawn(alongProps({ of: 'tank.drain', across: 'left', up: ['head'] }, drainTrace));
  expect(chart.panels[0]!.across.range.map(Math.round)).toEqual([5, 45]);
  const [line] = chart.panels[0]!.lines;
  expect(line!.placed[0]!.x).toBeCloseTo(chart.panels[0]!.box.right, 6);
});

test('without a name the first column runs across', () => {
  expect(drawn(alongProps({ across: '' })).chart.xTitle?.text).toBe('Distance run, m');
  expect(drawn(alongProps({ across: 'speed', up: ['pull'] })).chart.xTitle?.text).toBe('Speed, m/s');
});

test('it says from what to what each quantity runs, its own least, its limit and the baseline', () => {
  expect(drawn(alongProps()).caption).toEqual([
    'Line pull runs from 1.2\u00a0N at 0\u00a0m to 9.2\u00a0N at 24\u00a0m; least 0.56\u00a0N at 0.96\u00a0m.',
    'Speed runs from 0\u00a0m/s at 0\u00a0m to 13\u00a0m/s at 24\u00a0m.',
    'Side force runs from −1.5\u00a0N at 0\u00a0m to −0.5\u00a0N at 24\u00a0m.',
    'Within the limit (least pull in the run under 2\u00a0N: the lines go slack): line pull from 6.87\u00a0m.',
    'Dotted: baseline, line pull 1.9\u00a0N to 11.5\u00a0N, speed 0\u00a0m/s to 13\u00a0m/s and side force −1.5\u00a0N to −0.5\u00a0N.',
  ]);
});

test('where one quantity stands alone it says where that keeps within its limits', () => {
  expect(drawn(alongProps({ up: ['pull'] })).caption[1]).toBe('Line pull in its limit from 6.87\u00a0m.');
});

test('a limit is drawn only where the chart names its check', () => {
  expect(drawn(alongProps()).chart.panels.map(({ zones }) => zones.length)).toEqual([1, 0]);
  const { checks: _, ...cell } = alongProps().cell;
  expect(drawn({ ...alongProps(), cell }).chart.panels.map(({ zones }) => zones.length)).toEqual([0, 0]);
});

test('a baseline that says the same is not drawn twice', () => {
  expect(drawn(alongProps()).chart.panels.map(({ ghosts }) => ghosts.length)).toEqual([2, 1]);
  const same = { ...runTrace, baseline: runTrace.present };
  const { chart, caption } = drawn(alongProps({}, same));
  expect(chart.panels.map(({ ghosts }) => ghosts.length)).toEqual([0, 0]);
  expect(caption.some((sentence) => sentence.startsWith('Dotted'))).toBe(false);
});

test('every point is read with its units, and stands in the table beside the baseline', () => {
  const { readings, table } = drawn(alongProps());
  expect(readings.map(({ name, points }) => [name, points.length])).toEqual([
    ['Line pull', 21],
    ['Side force', 21],
    ['', 21],
  ]);
  expect(readings[0]!.points[20]!.lines).toEqual(['Distance run 24\u00a0m', 'Line pull 9.2\u00a0N']);
  expect(table.head[0]!.map(({ text }) => text)).toEqual([
    ...['Distance run, m', 'Line pull, N', 'Speed, m/s', 'Side force, N'],
    ...['Baseline: distance run, m', 'Baseline: line pull, N', 'Baseline: speed, m/s', 'Baseline: side force, N'],
  ]);
  expect(table.rows[20]).toEqual({ head: '24', cells: ['9.2', '13', '-0.5', '21', '11.5', '13', '-0.5'].map(minus) });
});
const minus = (text: string): string => text.replace('-', '−');

test('points without an answer break the line, are counted and stand as dashes', () => {
  const pull = runTrace.present[1]!.map((value, k) => (k === 4 ? Number.NaN : value));
  const broken = { ...runTrace, present: runTrace.present.with(1, pull) };
  const { chart, caption, readings, table } = drawn(alongProps({}, broken));
  expect(caption.at(-1)).toBe('1 of 21 points has no answer and is left out.');
  expect(readings[0]!.points).toHaveLength(20);
  expect(table.rows[4]!.cells[0]).toBe('–');
  expect(chart.panels[0]!.lines[0]!.placed[4]!.y).toBeNaN();
});

test.each([
  [
    'a column that is not there',
    alongProps({ up: ['thrust'] }),
    'Along the run does not tell “thrust”. It tells distance run, line pull, side force, speed. Choose one of these.',
  ],
  [
    'a column across that is not there',
    alongProps({ across: 'time' }),
    'Along the run does not tell “time”. It tells distance run, line pull, side force, speed. Choose one of these.',
  ],
  [
    'a design without an answer',
    alongProps({}, { ...runTrace, present: [], message: 'The model does not come to its flying speed.' }),
    'The model does not come to its flying speed.',
  ],
  [
    'a trace that is not there',
    alongProps({}, { ...runTrace, columns: [], present: [], message: 'There is nothing called launch.run to draw.' }),
    'There is nothing called launch.run to draw.',
  ],
])('%s is said in place of the picture', (_, props, sentence) => {
  page.show(<AlongChart {...props} />);
  expect(page.body.textContent).toBe(sentence);
});
