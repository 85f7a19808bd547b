import { expect, test } from 'vitest';
import type { TraceAnswer } from '../../../engine/index';
import { createTraces } from '../../../workbook/store/traces';

function heldTraces(onSheet: (path: string) => boolean = () => true) {
  const asked: { path: string; variant?: string; give(revision: number): void; fail(error: Error): void }[] = [];
  const traces = createTraces(
    {
      trace: (path, variant) =>
        new Promise<TraceAnswer>((resolve, reject) => {
          const give = (revision: number) =>
            resolve({
              ...{ revision, path, title: 'Ring', doc: '', columns: [], present: [] },
              ...(variant === undefined ? {} : { baseline: [Float64Array.of(revision)] }),
            });
          asked.push({ path, give, fail: reject, ...(variant === undefined ? {} : { variant }) });
        }),
    },
    onSheet,
  );
  return { asked, traces };
}
const turn = () => new Promise((resolve) => setTimeout(resolve, 0));

test('while a finger is down, only what is on the screen is asked for', () => {
  const { asked, traces } = heldTraces();
  traces.of('lap.other');
  const leave = traces.watch('lap.ring');
  void traces.refresh(1, false);
  expect(asked.map(({ path }) => path)).toEqual(['lap.ring']);
  leave();
  void traces.refresh(2, false);
  expect(asked).toHaveLength(1);
  void traces.refresh(2, true);
  expect(asked.map(({ path }) => path)).toEqual(['lap.ring', 'lap.other', 'lap.ring']);
});

test('one design is asked for once, and an answer for an older one is passed over', async () => {
  const { asked, traces } = heldTraces();
  traces.watch('lap.ring');
  void traces.refresh(1, true);
  void traces.refresh(1, true);
  traces.watch('lap.ring');
  expect(asked).toHaveLength(1);
  void traces.refresh(2, true);
  asked[0]!.give(1);
  await turn();
  expect(traces.of('lap.ring').value).toBeUndefined();
  asked[1]!.give(2);
  await turn();
  expect(traces.of('lap.ring').value!.revision).toBe(2);
});

test('an engine that fails says so in place of the ring', async () => {
  const { asked, traces } = heldTraces();
  traces.watch('lap.ring');
  void traces.refresh(1, true);
  asked[0]!.fail(new Error('The engine stopped.'));
  await turn();
  expect(traces.of('lap.ring').value!.message).toBe('The engine stopped.');
});

test('at rest, what a chart off the screen asks for is there too, so that it can be printed', async () => {
  const { asked, traces } = heldTraces();
  void traces.refresh(1, true);
  const ring = traces.of('lap.ring');
  expect(asked.map(({ path }) => path)).toEqual(['lap.ring']);
  asked[0]!.give(1);
  await turn();
  expect(ring.value!.revision).toBe(1);
});

test('what runs along something on a sheet that is not shown waits', () => {
  const { asked, traces } = heldTraces((path) => path !== 'tank.drain');
  traces.of('tank.drain');
  traces.of('lap.ring');
  void traces.refresh(1, true);
  expect(asked.map(({ path }) => path)).toEqual(['lap.ring']);
  traces.watch('tank.drain');
  expect(asked.map(({ path }) => path)).toEqual(['lap.ring', 'tank.drain']);
});

test('a variant is asked for where the design is at rest, once for each design, and stays as it was until then', async () => {
  const { asked, traces } = heldTraces();
  const ofVariant = () => asked.filter(({ variant }) => variant === 'Ply tail');
  void traces.refresh(1, true);
  const ghost = traces.ghost('lap.ring', 'Ply tail');
  traces.ghost('lap.ring', 'Ply tail');
  expect(ofVariant()).toHaveLength(1);
  ofVariant()[0]!.give(1);
  await turn();
  expect(ghost.value).toEqual([Float64Array.of(1)]);
  void traces.refresh(2, false);
  traces.ghost('lap.ring', 'Ply tail');
  expect(ofVariant()).toHaveLength(1);
  expect(ghost.value).toEqual([Float64Array.of(1)]);
  void traces.refresh(2, true);
  traces.ghost('lap.ring', 'Ply tail');
  expect(ofVariant()).toHaveLength(2);
});
