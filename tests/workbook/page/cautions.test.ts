import { expect, test } from 'vitest';
import { cautions, cautionsAfter, cautionsOfBlock, fillCaution } from '../../../workbook/page/standing/cautions';

test('a caution stands once, after the last of the figures that it bears on', () => {
  const figures = ['parts.mass', 'flight.pull', 'flight.pull_per_weight', 'flight.speed'];
  expect(figures.map((_, index) => cautionsAfter(figures, index).length)).toEqual([0, 0, 1, 0]);
  expect(cautionsAfter(['parts.mass', 'balance.cg_x'], 0)).toEqual([]);
});

test('the pull stands beside the pull test of the whole system, the power lines and that it is an estimate', () => {
  const said = cautionsAfter(['flight.pull'], 0)
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

test('the blocks that can hurt have a caution', () => {
  for (const role of ['flight', 'lines', 'engine', 'parts', 'control', 'shutoff'])
    expect(cautionsOfBlock(role)).not.toEqual([]);
  expect(cautionsOfBlock('air')).toEqual([]);
});

test('the control linkage says up is up, what to look at, and who decides', () => {
  const said = cautionsOfBlock('control')
    .flatMap((caution) => caution.sentences)
    .join(' ');
  for (const words of [
    'up is up',
    'hinge',
    'Stop if the margin of the pull is below 1',
    'rule book',
    'club practice',
  ]) {
    expect(said).toContain(words);
  }
});

test('holes are filled with the value in the unit that the sentence asks for', () => {
  const show = (path: string, unit: string) => `<${path} in ${unit}>`;
  expect(fillCaution('Pull-test first.[ The pull is {flight.pull|N} ({flight.pull|lbf}).]', show)).toBe(
    'Pull-test first. The pull is <flight.pull in N> (<flight.pull in lbf>).',
  );
});

test('without a value the caution stands, and the piece that would name it falls away', () => {
  expect(fillCaution('Keep clear of a circle[ of {lines.guide_radius|m}], always.', () => undefined)).toBe(
    'Keep clear of a circle, always.',
  );
  for (const sentence of cautions.flatMap((caution) => caution.sentences)) {
    expect(fillCaution(sentence, () => undefined)).not.toMatch(/[{}[\]|]/);
  }
});

test('no caution tells anybody to go', () => {
  for (const sentence of cautions.flatMap((caution) => caution.sentences)) {
    expect(sentence).not.toMatch(/\bgo\b|\bsafe to\b|\bok\b/i);
  }
});
