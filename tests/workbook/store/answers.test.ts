import { expect, test } from 'vitest';
import { createAnswers } from '../../../workbook/store/answers';

interface Answer {
  readonly state: 'settled' | 'fault' | 'stopped';
  readonly says: string;
}

function heldAnswers() {
  const asked: { name: string; give(answer: Answer): void; fail(error: Error): void }[] = [];
  const answers = createAnswers<Answer>(
    (name) => new Promise((give, fail) => asked.push({ name, give, fail })),
    (name, revision, message) => ({ state: 'fault', says: `${name}, ${revision}: ${message}` }),
  );
  const told = () => ({ says: answers.of('fit').value?.says, working: answers.working('fit').value });
  return { asked, answers, told };
}
const turn = () => new Promise((resolve) => setTimeout(resolve, 0));

test('what is on the screen is asked for, once for each design', async () => {
  const { asked, answers, told } = heldAnswers();
  answers.of('other');
  const leave = answers.watch('fit');
  expect(asked).toEqual([]);
  void answers.refresh(1);
  void answers.refresh(1);
  expect(asked.map(({ name }) => name)).toEqual(['fit']);
  expect(told()).toEqual({ says: undefined, working: true });
  asked[0]!.give({ state: 'settled', says: 'first' });
  await turn();
  expect(told()).toEqual({ says: 'first', working: false });
  leave();
  void answers.refresh(2);
  expect(asked).toHaveLength(1);
  answers.watch('fit');
  expect(asked).toHaveLength(2);
});

test('an answer that an edit stopped, or that is for an older design, leaves the last one and goes on', async () => {
  const { asked, answers, told } = heldAnswers();
  answers.watch('fit');
  void answers.refresh(1);
  asked[0]!.give({ state: 'settled', says: 'first' });
  await turn();
  void answers.refresh(2);
  asked[1]!.give({ state: 'stopped', says: 'nothing' });
  await turn();
  expect(told()).toEqual({ says: 'first', working: true });
  void answers.refresh(3);
  void answers.refresh(4);
  asked[2]!.give({ state: 'settled', says: 'third' });
  await turn();
  expect(told()).toEqual({ says: 'first', working: true });
  asked[3]!.give({ state: 'settled', says: 'fourth' });
  await turn();
  expect(told()).toEqual({ says: 'fourth', working: false });
});

test('an asking that comes to nothing is a fault with its words', async () => {
  const { asked, answers, told } = heldAnswers();
  answers.watch('fit');
  void answers.refresh(1);
  asked[0]!.fail(new Error('the engine is gone'));
  await turn();
  expect(told()).toEqual({ says: 'fit, 1: the engine is gone', working: false });
});
