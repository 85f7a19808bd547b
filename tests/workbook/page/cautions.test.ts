import { expect, test } from 'vitest';
import { cautionsOf } from '../../../engine/blocks/cautions';
import { fillCaution } from '../../../engine/blocks/fill-caution';
import { blocks } from '../../../engine/blocks/registry';
import { formatQuantity } from '../../../engine/units/index';
import { cautionsAfter, greatestOf, stands } from '../../../workbook/page/standing/cautions';

const cautions = cautionsOf(blocks);

test('a caution stands once, after the last of the figures that it bears on', () => {
  const figures = ['parts.mass', 'flight.pull', 'flight.pull_per_weight', 'flight.speed'];
  expect(figures.map((_, index) => cautionsAfter(cautions, figures, index).length)).toEqual([0, 0, 1, 1]);
  expect(cautionsAfter(cautions, ['parts.mass', 'balance.cg_x'], 0)).toEqual([]);
});

test('the pull stands beside the pull test of the whole system, the power lines and that it is an estimate', () => {
  const said = cautionsAfter(cautions, ['flight.pull'], 0)
    .flatMap((caution) => caution.sentences)
    .join(' ');
  for (const words of [
    'handle, lines, connectors, leadouts and bellcrank',
    'rule book',
    'power lines',
    'lightning',
    'estimates',
  ]) {
    expect(said).toContain(words);
  }
});

test('the red caution quotes the greatest pull that the design knows of, in both units', () => {
  const [caution] = cautionsAfter(cautions, ['flight.pull'], 0);
  const said = (names: Readonly<Record<string, string>>, values: Readonly<Record<string, number>>): string => {
    const sheet = {
      namesOfRole: (role: string) => (names[role] === undefined ? [] : [names[role]]),
      value: (path: string) => values[path] ?? Number.NaN,
    };
    const path = greatestOf(caution!, sheet);
    return fillCaution(caution!.sentences[0]!, (_, unit) => (path ? formatQuantity(values[path]!, unit) : undefined));
  };
  const calm = { 'level.pull_at_handle': 25.7 };
  expect(said({ flight: 'level' }, calm)).toBe(
    'Pull-test handle, lines, connectors, leadouts and bellcrank together, by the current rule book, before each session and after any crash or repair. The greatest pull that this design knows of is estimated at 25.7\u00a0N (5.8\u00a0lbf); the rule book sets the load of the test.',
  );
  const windy = { ...calm, 'day.greatest_pull_at_handle': 41, 'day.greatest_pull_in_gust': 64 };
  expect(said({ flight: 'level', lap: 'day' }, windy)).toContain('estimated at 64\u00a0N (14.4\u00a0lbf)');
  // A gust in which no lap can be flown has no number.
  expect(said({ flight: 'level', lap: 'day' }, { ...windy, 'day.greatest_pull_in_gust': Number.NaN })).toContain(
    '41\u00a0N',
  );
  expect(said({ flight: 'level', strength: 'system' }, { ...calm, 'system.greatest_pull': 70 })).toContain('70\u00a0N');
  expect(said({ flight: 'level' }, {})).not.toContain('estimated');
});

test('a caution with a limit stands only while its result is over it, and one without always', () => {
  const [pull, fast] = [
    cautions.find(({ figures }) => figures.includes('flight.pull'))!,
    cautions.find(({ over }) => over?.result === 'pitch_speed_share')!,
  ];
  const at = (share: number) => ({
    value: (path: string) => (path === 'level.pitch_speed_share' ? share : Number.NaN),
  });
  expect([0.85, 1, 1.001, Number.NaN].map((share) => stands(fast, 'level', at(share)))).toEqual([
    false,
    false,
    true,
    false,
  ]);
  expect(stands(pull, 'level', at(0.85))).toBe(true);
});
