import { expect, test } from 'vitest';
import type { SweepProgress, SweepRequest } from '../../../engine/index';
import { createSweeps } from '../../../workbook/store/sweeps';

const progress = (revision: number, done: number, state: SweepProgress['state'] = 'running'): SweepProgress => ({
  revision,
  sweep: 'cg_sweep',
  axes: [],
  wanted: [],
  columns: [],
  why: new Uint16Array(0),
  sentences: [],
  done,
  total: 75,
  state,
});

function heldSweeps() {
  const asked: { request: SweepRequest; tell(p: SweepProgress): void; end(): void; fail(error: Error): void }[] = [];
  const sweeps = createSweeps({
    sweep: (request, tell) =>
      new Promise<void>((resolve, reject) => {
        asked.push({ request, tell, end: resolve, fail: reject });
      }),
    stop: async () => {},
  });
  return { asked, sweeps };
}
const turn = () => new Promise((resolve) => setTimeout(resolve, 0));

test('only what is on the screen is swept', async () => {
  const { asked, sweeps } = heldSweeps();
  const leave = sweeps.watch('cg_sweep');
  sweeps.progress('pull_sweep');
  void sweeps.refresh(1, false);
  expect(asked.map((a) => a.request)).toEqual([{ sweep: 'cg_sweep', coarse: false }]);
  leave();
  void sweeps.refresh(2, false);
  expect(asked).toHaveLength(1);
});

test('what comes on the screen later is swept then, and only when it is behind', () => {
  const { asked, sweeps } = heldSweeps();
  void sweeps.refresh(1, false);
  const leave = sweeps.watch('cg_sweep');
  expect(asked).toHaveLength(1);
  leave();
  sweeps.watch('cg_sweep');
  expect(asked).toHaveLength(1);
});

test('a coarse run leaves the sweep behind: the full one follows when it is next watched', () => {
  const { asked, sweeps } = heldSweeps();
  const leave = sweeps.watch('cg_sweep');
  void sweeps.refresh(1, true);
  expect(asked.at(-1)!.request.coarse).toBe(true);
  leave();
  void sweeps.refresh(2, false);
  sweeps.watch('cg_sweep');
  expect(asked.at(-1)!.request).toEqual({ sweep: 'cg_sweep', coarse: false });
});

test('rows of an older design and of a stopped run are not shown', () => {
  const { asked, sweeps } = heldSweeps();
  sweeps.watch('cg_sweep');
  void sweeps.refresh(1, false);
  asked[0]!.tell(progress(1, 10));
  void sweeps.refresh(2, false);
  asked[0]!.tell(progress(1, 20));
  expect(sweeps.progress('cg_sweep').value!.done).toBe(10);
  asked[1]!.tell(progress(2, 5, 'stopped'));
  expect(sweeps.progress('cg_sweep').value!.done).toBe(10);
  asked[1]!.tell(progress(2, 75, 'done'));
  expect(sweeps.progress('cg_sweep').value).toMatchObject({ revision: 2, done: 75 });
});

test('a sweep that fails says why, and the count of running ones comes back to nothing', async () => {
  const { asked, sweeps } = heldSweeps();
  sweeps.watch('cg_sweep');
  void sweeps.refresh(1, false);
  expect(sweeps.running.value).toBe(1);
  asked[0]!.fail(new Error('There is no sweep called "cg_sweep".'));
  await turn();
  expect(sweeps.progress('cg_sweep').value).toMatchObject({
    state: 'fault',
    message: 'There is no sweep called "cg_sweep".',
  });
  expect(sweeps.running.value).toBe(0);
});
