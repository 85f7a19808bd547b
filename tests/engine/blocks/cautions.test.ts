import { expect, test } from 'vitest';
import { cautionsOf } from '../../../engine/blocks/cautions';
import { fillCaution } from '../../../engine/blocks/fill-caution';
import { partsResults } from '../../../engine/blocks/parts/results';
import { blocks } from '../../../engine/blocks/registry';

const cautions = cautionsOf(blocks);
const saidOf = (wanted: string): string =>
  cautions
    .filter(({ role }) => role === wanted)
    .flatMap(({ sentences }) => sentences)
    .join(' ');

test('what can hurt has a caution, and what cannot has none', () => {
  const hurt = 'flight lines engine parts control shutoff strength gear lap launch glide tank race'.split(' ');
  for (const role of hurt) expect(saidOf(role), role).not.toBe('');
  expect(saidOf('air')).toBe('');
});

test('blocks of one role share one list, so that none of them goes without', () => {
  for (const block of blocks) {
    const first = blocks.find(({ role, kind }) => (role ?? kind) === (block.role ?? block.kind));
    expect(block.cautions, block.kind).toBe(first?.cautions);
  }
});

test('a caution stands beside results of its own block, and its holes are such results', () => {
  const resultsOf = new Map<string, object>([
    ...blocks.map(({ kind, role, results }) => [role ?? kind, results] as const),
    ['parts', partsResults],
  ]);
  for (const { role, figures, greatest, over, sentences } of cautions) {
    for (const path of greatest) {
      const [of = '', result = ''] = path.split('.');
      expect(result in (resultsOf.get(of) ?? {}), path).toBe(true);
    }
    const names = [
      ...figures.map((path) => path.slice(role.length + 1)),
      ...(over ? [over.result] : []),
      ...sentences.flatMap((sentence) => [...sentence.matchAll(/\{(\w+)\|/g)].map(([, name = '']) => name)),
    ];
    expect(
      names.filter((name) => !(name in (resultsOf.get(role) ?? {})) && !(name === 'greatest' && greatest.length > 0)),
      role,
    ).toEqual([]);
  }
});

test.each([
  ['lap', ['slack lines', 'power lines', 'lightning', 'rule book', 'club practice']],
  ['launch', ['pull test', 'thong', 'up is up', 'propeller', 'rule book']],
  ['glide', ['propeller', 'circle clear', 'rule book']],
  ['tank', ['flame that cannot be seen', 'outdoors', 'extinguisher', 'local codes']],
  ['race', ['rule book', 'propeller', 'pull-tested', 'eyes']],
] as const)('the caution of the %s says %j', (role, words) => {
  for (const each of words) expect(saidOf(role)).toContain(each);
});

test('the control linkage says up is up, what to look at, and who decides', () => {
  for (const words of [
    'up is up',
    'hinge',
    'Stop if the margin of the pull is below 1',
    'rule book',
    'club practice',
  ]) {
    expect(saidOf('control')).toContain(words);
  }
});

test('holes are filled with the value in the unit that the sentence asks for', () => {
  const show = (name: string, unit: string) => `<${name} in ${unit}>`;
  expect(fillCaution('Pull-test first.[ The pull is {pull|N} ({pull|lbf}).]', show)).toBe(
    'Pull-test first. The pull is <pull in N> (<pull in lbf>).',
  );
  expect(fillCaution('Pull-test first.[ The pull is {pull|N} ({pull|lbf}) in {wind|m/s}.]', show, 'inch_pound')).toBe(
    'Pull-test first. The pull is <pull in lbf> (<pull in N>) in <wind in mph>.',
  );
});

test('without a value the caution stands, and the piece that would name it falls away', () => {
  expect(fillCaution('Keep clear of a circle[ of {guide_radius|m}], always.', () => undefined)).toBe(
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

test.each([
  [
    'flight',
    'pitch_speed_share',
    1,
    'This model would fly faster than its propeller screws itself forward: <speed in m/s> is <pitch_speed_share in %> of rpm × pitch. Look at rpm, pitch and lap time: one of them is likely wrong, and the pull follows from them.',
  ],
  [
    'tank',
    'fuel_apart',
    0.05,
    'The tank and the table of weights do not count the same fuel: the full tank is <fuel_apart in %> apart from the table. CG and pull follow the table: give both one volume.',
  ],
] as const)('the %s warns when %s is over %d', (role, result, at, words) => {
  const found = cautions.filter((each) => each.role === role && each.over !== undefined);
  expect(found.map(({ over }) => over)).toEqual([{ result, at }]);
  expect(found[0]!.sentences.map((each) => fillCaution(each, (name, unit) => `<${name} in ${unit}>`))).toEqual([words]);
});
