import { expect, test, vi } from 'vitest';
import type { TableAnswer, TableView } from '../../../engine/index';
import { createTableFeed } from '../../../workbook/store/table-feed';

const view = (sort: string): TableView => ({
  series: 's',
  columns: [],
  keep: [],
  rows: 'all',
  reason: '',
  groups: [],
  measures: [],
  sort,
  descending: false,
});
const answer = (from: number, state: TableAnswer['state'] = 'ready'): TableAnswer => ({
  state,
  columns: [],
  total: 9,
  rows: 9,
  from,
  values: [],
  samples: new Uint32Array(0),
  reasons: [],
  present: -1,
  exact: false,
  causes: [],
});
const turn = () => new Promise((resolve) => setTimeout(resolve, 0));

function held() {
  const asked: { with: [TableView, number, number]; answer(a: TableAnswer): void; fail(e: Error): void }[] = [];
  const onFault = vi.fn();
  const feed = createTableFeed(
    {
      table: (...given) =>
        new Promise((resolve, reject) => {
          asked.push({ with: given, answer: resolve, fail: reject });
        }),
    },
    onFault,
  );
  return { asked, feed, onFault };
}

test('while an answer is out only the last asking is kept', async () => {
  const { asked, feed } = held();
  feed.want(view(''), 0, 60);
  feed.want(view(''), 100, 160);
  feed.want(view('a'), 200, 260);
  expect(asked).toHaveLength(1);
  asked[0]!.answer(answer(0));
  await turn();
  expect(asked).toHaveLength(2);
  expect(asked[1]!.with).toEqual([view('a'), 200, 260]);
  asked[1]!.answer(answer(200));
  await turn();
  expect(feed.answer.value?.from).toBe(200);
  expect(feed.behind.value).toBe(false);
});

test('rows of the design before stay until the sweep has been computed anew', async () => {
  const { asked, feed } = held();
  feed.want(view(''), 0, 60);
  asked[0]!.answer(answer(0));
  await turn();
  feed.want(view(''), 0, 60);
  asked[1]!.answer(answer(0, 'waits'));
  await turn();
  expect(feed.answer.value?.state).toBe('ready');
  expect(feed.behind.value).toBe(true);
});

test('a failure is told, and the next asking goes out', async () => {
  const { asked, feed, onFault } = held();
  feed.want(view(''), 0, 60);
  asked[0]!.fail(new Error('No document is open'));
  await turn();
  expect(onFault).toHaveBeenCalledExactlyOnceWith('No document is open');
  feed.want(view(''), 0, 60);
  expect(asked).toHaveLength(2);
});
