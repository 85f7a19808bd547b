import { expect, test } from 'vitest';
import type { SweepProgress } from '../../../engine/index';
import { newerProgress } from '../../../workbook/store/newer-progress';

/** Three samples of one result along one axis; undefined: not computed. */
function progress(rows: readonly (number | undefined)[], more: Partial<SweepProgress> = {}): SweepProgress {
  return {
    revision: 1,
    sweep: 'cg_sweep',
    axes: [{ path: 'engine_station', values: new Float64Array([-0.17, -0.15, -0.13]) }],
    wanted: ['balance.cg_x'],
    columns: [Float64Array.from(rows, (row) => row ?? Number.NaN)],
    why: Uint16Array.from(rows, (row) => (row === undefined ? 65535 : 0)),
    sentences: [],
    done: rows.filter((row) => row !== undefined).length,
    total: 3,
    state: 'done',
    ...more,
  };
}
const full = progress([0.04, 0.046, 0.052]);

test('the first rows are shown as they come', () => expect(newerProgress(undefined, full)).toBe(full));

test('rows that say the same leave the picture as it is', () => {
  expect(newerProgress(full, progress([0.04, 0.046, 0.052], { revision: 2 }))).toBe(full);
});

test('a coarse run of the same lines does not take the fine points away', () => {
  expect(newerProgress(full, progress([0.04, undefined, 0.052], { revision: 2 }))).toBe(full);
});

test.each([
  ['another number', progress([0.04, 0.047, 0.052])],
  ['another number in a coarse run', progress([0.041, undefined, 0.052])],
  ['no answer where there was one', progress([0.04, Number.NaN, 0.052], { why: Uint16Array.of(0, 1, 0) })],
  [
    'another range',
    progress([0.04, 0.046, 0.052], { axes: [{ path: 'engine_station', values: Float64Array.of(1, 2, 3) }] }),
  ],
  ['another result', progress([0.04, 0.046, 0.052], { wanted: ['balance.cg_share'] })],
  ['another reason', progress([0.04, 0.046, 0.052], { sentences: ['The lines are slack.'] })],
  ['another fault', progress([0.04, 0.046, 0.052], { message: 'tip weight has no amount to be changed by.' })],
  ['another change', progress([0.04, 0.046, 0.052], { levers: { changes: [], present: [1] } })],
  ['another state', progress([0.04, 0.046, 0.052], { state: 'running' })],
])('%s is shown', (_, next) => expect(newerProgress(full, next)).toBe(next));

test('more rows are shown', () => {
  const coarse = progress([0.04, undefined, 0.052]);
  expect(newerProgress(coarse, full)).toBe(full);
});
