import { expect, test, vi } from 'vitest';
import type { Document, Shown, Snapshot } from '../../../engine/index';
import { linkEngine } from '../../../workbook/store/engine-link';

const snapshot = (revision: number): Snapshot => ({
  revision,
  shape: 's',
  values: new Float64Array(0),
  faults: [],
  drawing: [],
});
const sheet = (title: string): Document => ({ title }) as Document;

/** An engine whose answers wait until they are let go. */
function heldEngine() {
  const calls: {
    what: 'open' | 'set';
    with: unknown;
    shown?: Shown | undefined;
    answer(): void;
    fail(error: Error): void;
  }[] = [];
  const held = (what: 'open' | 'set') => (given: unknown, shown?: Shown) =>
    new Promise<Snapshot>((resolve, reject) => {
      calls.push({ what, with: given, shown, answer: () => resolve(snapshot(calls.length)), fail: reject });
    });
  return { calls, engine: { open: held('open'), set: held('set') } };
}

function link(settle: () => Promise<void> = async () => {}, shown?: () => Shown | undefined) {
  const { calls, engine } = heldEngine();
  const taken: number[] = [];
  const onFault = vi.fn();
  const onBusy = vi.fn();
  const made = linkEngine(engine, {
    ...{ take: (s) => taken.push(s.revision), settle, onBusy, onFault },
    shown: shown ?? (() => undefined),
  });
  return { calls, taken, onFault, onBusy, made };
}
const turn = () => new Promise((resolve) => setTimeout(resolve, 0));

test('what is edited while a call is out is gathered: one call more, with the latest text of each path', async () => {
  const { calls, taken, made } = link();
  made.open(sheet('start'));
  calls[0]!.answer();
  await turn();
  made.set(sheet('1'), new Map([['tip', '1 g']]));
  for (const text of ['2 g', '3 g', '4 g']) made.set(sheet(text), new Map([['tip', text]]));
  made.set(sheet('nose'), new Map([['nose', '9 g']]));
  expect(calls).toHaveLength(2);
  calls[1]!.answer();
  await turn();
  expect(calls[2]).toMatchObject({
    what: 'set',
    with: [
      ['tip', '4 g'],
      ['nose', '9 g'],
    ],
  });
  calls[2]!.answer();
  await turn();
  expect(taken).toHaveLength(3);
  expect(made.busy()).toBe(false);
});

test('a new structure swallows the texts that waited and those that come after it', async () => {
  const { calls, made } = link();
  made.open(sheet('start'));
  made.set(sheet('a'), new Map([['tip', '1 g']]));
  made.open(sheet('b'));
  made.set(sheet('c'), new Map([['tip', '2 g']]));
  calls[0]!.answer();
  await turn();
  expect(calls).toHaveLength(2);
  expect(calls[1]).toMatchObject({ what: 'open', with: { title: 'c' } });
});

test('the next call waits until what follows the answer has settled', async () => {
  let letGo = () => {};
  const { calls, made } = link(
    () =>
      new Promise<void>((resolve) => {
        letGo = resolve;
      }),
  );
  made.open(sheet('start'));
  calls[0]!.answer();
  await turn();
  made.set(sheet('a'), new Map([['tip', '1 g']]));
  await turn();
  expect(calls).toHaveLength(1);
  letGo();
  await turn();
  expect(calls).toHaveLength(2);
});

test('when the engine fails it is said, and the next call sends the whole document', async () => {
  const { calls, taken, onFault, made } = link();
  made.open(sheet('start'));
  calls[0]!.answer();
  await turn();
  made.set(sheet('a'), new Map([['tip', '1 g']]));
  calls[1]!.fail(new Error('no such step'));
  await turn();
  expect(onFault).toHaveBeenCalledExactlyOnceWith('no such step');
  made.set(sheet('b'), new Map([['tip', '2 g']]));
  await turn();
  expect(calls[2]).toMatchObject({ what: 'open', with: { title: 'b' } });
  calls[2]!.answer();
  await turn();
  expect(taken).toHaveLength(2);
});

test('it says when it is busy and when it is done', async () => {
  const { calls, onBusy, made } = link();
  made.open(sheet('start'));
  expect(onBusy.mock.calls).toEqual([[true]]);
  calls[0]!.answer();
  await turn();
  expect(onBusy.mock.calls).toEqual([[true], [false]]);
});

test('while a hand moves the design the engine is told what is shown; at rest it is asked for all, once', async () => {
  let shown: Shown | undefined = { cells: ['c1'], paths: [] };
  const { calls, made } = link(undefined, () => shown);
  made.open(sheet('start'));
  calls[0]!.answer();
  await turn();
  made.set(sheet('1'), new Map([['tip', '1 g']]));
  expect(calls[1]).toMatchObject({ with: [['tip', '1 g']], shown });
  // A rest in between is asked for with the next move's text, and forgotten where that move goes on.
  made.rest(sheet('1'));
  made.set(sheet('2'), new Map([['tip', '2 g']]));
  calls[1]!.answer();
  await turn();
  expect(calls[2]).toMatchObject({ with: [['tip', '2 g']], shown });
  made.rest(sheet('2'));
  calls[2]!.answer();
  await turn();
  expect(calls[3]).toMatchObject({ with: [], shown: undefined });
  shown = undefined;
  made.rest(sheet('2'));
  calls[3]!.answer();
  await turn();
  expect(calls[4]).toMatchObject({ with: [], shown: undefined });
  calls[4]!.answer();
  await turn();
  expect(calls).toHaveLength(5);
  expect(made.busy()).toBe(false);
});
