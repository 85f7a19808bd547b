import { effect } from '@preact/signals';
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

function heldSweeps(onSheet: (sweep: string) => boolean = () => true) {
  const asked: { request: SweepRequest; tell(p: SweepProgress): void; end(): void; fail(error: Error): void }[] = [];
  const sweeps = createSweeps(
    {
      sweep: (request, tell) =>
        new Promise<void>((resolve, reject) => {
          asked.push({ request, tell, end: resolve, fail: reject });
        }),
      stop: async () => {},
    },
    onSheet,
  );
  return { asked, sweeps };
}
const turn = () => new Promise((resolve) => setTimeout(resolve, 0));

test('while a finger is down, only what is on the screen is swept, and coarsely', async () => {
  const { asked, sweeps } = heldSweeps();
  const leave = sweeps.watch('cg_sweep');
  sweeps.progress('pull_sweep');
  void sweeps.refresh(1, true);
  expect(asked.map((a) => a.request)).toEqual([{ sweep: 'cg_sweep', coarse: true }]);
  asked[0]!.end();
  await turn();
  leave();
  void sweeps.refresh(2, true);
  expect(asked).toHaveLength(1);
});

test('at rest, what is on the screen comes first, then the rest of the sheet', async () => {
  const { asked, sweeps } = heldSweeps();
  sweeps.progress('pull_sweep');
  sweeps.watch('cg_sweep');
  void sweeps.refresh(1, false);
  expect(asked.map((a) => a.request.sweep)).toEqual(['cg_sweep']);
  asked[0]!.end();
  await turn();
  expect(asked.map((a) => a.request.sweep)).toEqual(['cg_sweep', 'pull_sweep']);
});

test('the sweeps of a sheet that is not shown wait until something on the screen shows them', async () => {
  const { asked, sweeps } = heldSweeps((sweep) => sweep !== 'pull_sweep');
  sweeps.progress('pull_sweep');
  sweeps.progress('cg_sweep');
  sweeps.ghost('pull_sweep', ['line_length']);
  void sweeps.refresh(1, false, true);
  await turn();
  asked.at(-1)!.end();
  await turn();
  expect(asked.map((a) => a.request)).not.toContainEqual({ sweep: 'pull_sweep', coarse: false });
  sweeps.watch('pull_sweep');
  expect(asked.at(-1)!.request).toEqual({ sweep: 'pull_sweep', coarse: false });
});

test('a newer design ends the round of the older one', async () => {
  const { asked, sweeps } = heldSweeps();
  sweeps.progress('pull_sweep');
  sweeps.watch('cg_sweep');
  void sweeps.refresh(1, false);
  void sweeps.refresh(2, false);
  for (const a of [...asked]) a.end();
  await turn();
  expect(asked.map((a) => a.request.sweep)).toEqual(['cg_sweep', 'cg_sweep', 'pull_sweep']);
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

test('a coarse run leaves the sweep behind: the full one follows', () => {
  const { asked, sweeps } = heldSweeps();
  sweeps.watch('cg_sweep');
  void sweeps.refresh(1, true);
  void sweeps.refresh(1, false);
  expect(asked.map((a) => a.request.coarse)).toEqual([true, false]);
});

test('the baseline is swept at rest, after the design itself, and only where there is one', async () => {
  const { asked, sweeps } = heldSweeps();
  sweeps.watch('cg_sweep');
  const ghost = sweeps.ghost('cg_sweep', ['engine_station']);
  void sweeps.refresh(1, true, true);
  asked[0]!.end();
  await turn();
  expect(asked).toHaveLength(1);
  void sweeps.refresh(1, false, true);
  asked[1]!.end();
  await turn();
  expect(asked[2]!.request).toEqual({ sweep: 'cg_sweep', baseline: ['engine_station'], coarse: false });
  asked[2]!.tell(progress(1, 25, 'done'));
  expect(ghost.value?.done).toBe(25);
  asked[2]!.end();
  await turn();
  void sweeps.refresh(2, false, false);
  asked[3]!.end();
  await turn();
  expect(asked).toHaveLength(4);
  expect(ghost.value).toBeUndefined();
});

test('a chart that begins to show the baseline has it swept then, once', async () => {
  const { asked, sweeps } = heldSweeps();
  void sweeps.refresh(3, false, true);
  sweeps.ghost('cg_sweep', ['engine_station']);
  sweeps.ghost('cg_sweep', ['engine_station']);
  expect(asked).toHaveLength(0);
  await turn();
  expect(asked.map((a) => a.request.baseline)).toEqual([['engine_station']]);
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

test('rows that come out the same for a newer design hold for that one, and are no other progress', () => {
  const { asked, sweeps } = heldSweeps();
  sweeps.watch('cg_sweep');
  void sweeps.refresh(1, false);
  asked[0]!.tell(progress(1, 75, 'done'));
  const first = sweeps.progress('cg_sweep').value;
  expect(sweeps.madeFor('cg_sweep').value).toBe(1);
  void sweeps.refresh(2, false);
  expect(sweeps.madeFor('cg_sweep').value).toBe(1);
  asked[1]!.tell(progress(2, 75, 'done'));
  expect(sweeps.progress('cg_sweep').value).toBe(first);
  expect(sweeps.madeFor('cg_sweep').value).toBe(2);
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

test('what a person stops stays as far as it came, until it is asked for again or the design changes', async () => {
  const { asked, sweeps } = heldSweeps();
  sweeps.watch('cg_sweep');
  void sweeps.refresh(1, false);
  sweeps.stop('cg_sweep');
  asked[0]!.tell(progress(1, 30, 'stopped'));
  expect(sweeps.progress('cg_sweep').value).toMatchObject({ state: 'stopped', done: 30 });
  asked[0]!.end();
  await turn();
  expect(asked).toHaveLength(1);
  sweeps.again('cg_sweep');
  asked[1]!.tell(progress(1, 75, 'done'));
  expect(sweeps.progress('cg_sweep').value).toMatchObject({ state: 'done', done: 75 });
});

test('whoever asks ahead does not follow how many are running, and asks once', async () => {
  const { asked, sweeps } = heldSweeps();
  let times = 0;
  const stop = effect(() => {
    times++;
    sweeps.watch('cg_sweep')();
  });
  void sweeps.refresh(1, true);
  sweeps.watch('pull_sweep')();
  for (const { end } of asked) end();
  await turn();
  expect(times).toBe(1);
  stop();
});
