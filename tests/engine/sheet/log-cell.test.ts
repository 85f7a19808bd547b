import { describe, expect, it } from 'vitest';
import { withText } from '../../../engine/sheet/baseline';
import type { Cell, Document, FitCell, LogCell } from '../../../engine/sheet/document';
import { openText, serialise } from '../../../engine/sheet/file';
import { faultsOfLive, openLive } from '../../../engine/sheet/live';
import { textAt } from '../../../engine/sheet/paths';
import { rename } from '../../../engine/sheet/rename';
import { cellsOf } from '../../../engine/sheet/sheets';
import { applyChanges } from '../../../engine/sheet/transaction';
import { library } from '../../../engine/study/index';
import { fitOf, logOf, row, withCells } from '../study/fit/flown';

const FACTORS = ['flight.drag_factor'];
const ROW = row('1', { pull: '25 N', lines: '18 m' }, { time: '50 s' });
const saidOf = (...cells: Cell[]): string[] =>
  faultsOfLive(openLive(withCells(cells), library)).map(({ message }) => message);
const logWith = (more: Partial<LogCell>): string[] => saidOf(logOf([ROW], more));
const fitWith = (more: Partial<FitCell>): string[] => saidOf(logOf([ROW]), fitOf(FACTORS, more));

describe('a log', () => {
  it('is quiet when all is well', () => expect(saidOf(logOf([ROW]), fitOf(FACTORS))).toEqual([]));

  it.each<[string, Partial<LogCell>, string]>([
    [
      'a result that is not there',
      { time: 'flight.lap_tme' },
      'Laps flown compares lap times with “flight.lap_tme”: nothing has that name. Did you mean the lap time of Level flight?',
    ],
    [
      'a result that is no time',
      { time: 'flight.pull' },
      'Laps flown compares lap times with the line pull of Level flight, which is no result that is a time. Take one such as the lap time of level flight.',
    ],
    [
      'no measuring error of times',
      { stopwatch: '' },
      'Laps flown has no measuring error for times. Type how far a stopped time may be off, such as “0.05\u00a0s”.',
    ],
    [
      'a column of nothing',
      { columns: [{ name: 'pull', of: 'flight.pul', error: '' }] },
      'Laps flown has a column of “flight.pul”: nothing has that name. Did you mean the line pull of Level flight?',
    ],
    [
      'a column without measuring error',
      { columns: [{ name: 'pull', of: 'flight.pull', error: '' }] },
      'The line pull of Level flight has no measuring error in Laps flown. Type how far a reading may be off, such as “2\u00a0N” on a spring scale.',
    ],
    [
      'a column twice',
      {
        columns: [
          { name: 'pull', of: 'flight.pull', error: '2 N' },
          { name: 'again', of: 'flight.pull', error: '2 N' },
        ],
      },
      'Laps flown has two columns of the line pull of Level flight. Remove one of them.',
    ],
    [
      'a column with a name of the log',
      { columns: [{ name: 'laps', of: 'flight.pull', error: '2 N' }] },
      'A column of Laps flown is called “laps”, which the log itself uses. Give it another name.',
    ],
    [
      'a column of a curve',
      { columns: [{ name: 'thrust', of: 'engine.thrust', error: '2 N' }] },
      'Laps flown has a column of the thrust of Engine and propeller, which is a curve. Take a single number.',
    ],
  ])('says %s', (_what, more, message) => expect(logWith(more)).toContain(message));

  it('has room for so many rows', () => {
    expect(saidOf(logOf(Array.from({ length: 301 }, () => ROW)))).toEqual([
      'Laps flown has 301 rows. At most 300 are allowed: put the older ones into a log of their own.',
    ]);
  });

  it('says a reading of another dimension at its place', () => {
    const document = withCells([logOf([row('1', { pull: '25 g' })])]);
    expect(faultsOfLive(openLive(document, library))).toMatchObject([{ path: 'flown.row1.pull', from: 0, to: 4 }]);
  });

  it('takes and gives its texts by path', () => {
    const document = withCells([logOf([ROW])]);
    expect(textAt(document, 'flown.row1.pull')).toBe('25 N');
    expect(textAt(document, 'flown.row1.rpm')).toBe('');
    const edited = withText(document, 'flown.row1.rpm', '11000 rpm')!;
    expect(textAt(edited, 'flown.row1.rpm')).toBe('11000 rpm');
    expect(withText(edited, 'flown.row1.rpm', '')).toEqual(document);
    expect(withText(document, 'flown.row2.time', '3 s')).toBeUndefined();
    expect(withText(document, 'flown.row1.other', '3 s')).toBeUndefined();
    for (const path of ['flown.stopwatch', 'flown.pull.error', 'flown.row1.laps', 'flown.row1.time']) {
      expect(textAt(withText(document, path, '7')!, path)).toBe('7');
    }
  });

  it('is no part of the design that a baseline keeps', () => {
    const document: Document = { ...withCells([logOf([ROW])]), baseline: {} };
    expect(withText(document, 'flown.row1.time', '51 s')!.baseline).toEqual({});
  });

  it('follows new names, and comes back from a file', () => {
    const document = withCells([logOf([ROW]), fitOf(['guide_x', ...FACTORS], { wanted: ['flight.pull_at_handle'] })]);
    const renamed = rename(document, 'flight', 'level');
    if (!renamed.ok) throw new Error(renamed.message);
    const after = applyChanges(document, renamed.changes).document;
    const [first, second] = cellsOf(after).slice(-2) as [LogCell, FitCell];
    expect(first).toMatchObject({ time: 'level.lap_time', columns: [{ of: 'level.pull_at_handle' }, {}, {}, {}] });
    expect(second).toMatchObject({ factors: ['guide_x', 'level.drag_factor'], wanted: ['level.pull_at_handle'] });
    const other = rename(after, 'flown', 'laps_of_may');
    if (!other.ok) throw new Error(other.message);
    expect(cellsOf(applyChanges(after, other.changes).document).at(-1)).toMatchObject({ log: 'laps_of_may' });
    const opened = openText(serialise(document));
    expect(opened.ok && cellsOf(opened.document).slice(-2)).toEqual(cellsOf(document).slice(-2));
  });
});

describe('a fit', () => {
  it.each<[string, Partial<FitCell>, string]>([
    ['no log', { log: '' }, 'Fit has no log to be fitted to. The logs are Laps flown.'],
    [
      'a log that is not there',
      { log: 'flow' },
      'Fit is fitted to the log “flow”: there is none of that name. The logs are Laps flown. Did you mean Laps flown?',
    ],
    [
      'no factor',
      { factors: [] },
      'Fit has no factor to find. Add one under “Factors”, such as the drag factor of level flight.',
    ],
    [
      'a factor that is not there',
      { factors: ['flight.drag_facto'] },
      'Fit fits “flight.drag_facto”: nothing has that name. Did you mean the drag factor of Level flight?',
    ],
    [
      'a factor that is a result',
      { factors: ['flight.pull'] },
      'Fit fits the line pull of Level flight. A factor is a variable or a number typed in the model.',
    ],
    [
      'a factor that is a choice',
      { factors: ['line_set'] },
      'Fit fits Line set: two lines of stranded steel. A factor is a variable or a number typed in the model.',
    ],
    [
      'a factor twice',
      { factors: [...FACTORS, ...FACTORS] },
      'Fit fits the drag factor of Level flight twice. Remove one of them.',
    ],
    [
      'a factor that the log says',
      { factors: ['line_length'] },
      'Fit fits the line length, which the log says for each flight. Remove it from the factors or from Laps flown.',
    ],
    [
      'a reading that was not taken',
      { wanted: ['flight.speed'] },
      'Fit counts the speed of Level flight, which Laps flown has not measured. It has the lap time of Level flight, the pull at the handle of Level flight, the shaft speed of Level flight.',
    ],
  ])('says %s', (_what, more, message) => expect(fitWith(more)).toContain(message));

  it('says that there is no log at all', () => {
    expect(saidOf(fitOf(FACTORS, { log: '' }))).toEqual([
      'Fit has no log to be fitted to. There is none yet; add one.',
    ]);
  });
});
