import { expect, test } from 'vitest';
import { cautionsOf } from '../../../engine/blocks/cautions';
import { blocks } from '../../../engine/blocks/registry';
import { cautionsAfter } from '../../../workbook/page/standing/cautions';

const cautions = cautionsOf(blocks);

test('a caution stands once, after the last of the figures that it bears on', () => {
  const figures = ['parts.mass', 'flight.pull', 'flight.pull_per_weight', 'flight.speed'];
  expect(figures.map((_, index) => cautionsAfter(cautions, figures, index).length)).toEqual([0, 0, 1, 0]);
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
