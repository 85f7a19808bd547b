import { expect, test } from 'vitest';
import type { SweepProgress } from '../../../engine/index';
import { progressWords } from '../../../workbook/cells/shared/progress-words';

const said = (more: Partial<SweepProgress>) =>
  progressWords({
    revision: 1,
    sweep: 's',
    axes: [],
    wanted: [],
    columns: [],
    why: new Uint16Array(0),
    sentences: [],
    done: 1200,
    total: 10_201,
    state: 'running',
    ...more,
  });

test('before anything is known of it', () => expect(progressWords(undefined)).toBe('not yet computed'));

test.each([
  [{}, '1200 of 10\u202f201 designs'],
  [{ left: 3400 }, '1200 of 10\u202f201 designs, about 3\u00a0s left'],
  [{ left: 80 }, '1200 of 10\u202f201 designs, about 1\u00a0s left'],
  [{ left: 119_000 }, '1200 of 10\u202f201 designs, about 119\u00a0s left'],
  [{ left: 300_000, total: 1_000_000 }, '1200 of 1\u202f000\u202f000 designs, about 5\u00a0min left'],
  [{ state: 'stopped' }, 'stopped at 1200 of 10\u202f201 designs'],
  [{ state: 'done', done: 10_201 }, '10\u202f201 of 10\u202f201 designs'],
] as const)('%j', (more, words) => expect(said(more)).toBe(words));
