import { expect, test } from 'vitest';
import { blocks } from '../../../engine/blocks/registry';
import { stretchesOf } from '../../../workbook/reference/written';

const marked = (text: string): string =>
  stretchesOf(text)
    .map(({ level, text: piece }) => (level === 'index' ? `[${piece}]` : level === 'power' ? `{${piece}}` : piece))
    .join('');

test.each([
  ['P_0^1.5/(√(2 ρ A) M Ω)', 'P[0]{1.5}/(√(2 ρ A) M Ω)'],
  ['C_L,max = 0.9', 'C[L,max] = 0.9'],
  ['l_m = l_f − y_g, l_s', 'l[m] = l[f] − y[g], l[s]'],
  ['11 Re^−¾ + 0.9 (1 − e^(−1000/Re))', '11 Re{−¾} + 0.9 (1 − e{−1000/Re})'],
  ['e^(−(Re/4500)^0.7)', 'e{−(Re/4500)^0.7}'],
  ['(x_cg − x_c̄)/c̄', '(x[cg] − x[c̄])/c̄'],
  ['x_¼ + 2', 'x[¼] + 2'],
  ['a^(b', 'a^(b'],
  ['', ''],
])('%s', (text, wanted) => expect(marked(text)).toBe(wanted));

test('nothing of an equation is lost', () => {
  for (const { theory } of blocks) {
    for (const { text } of theory?.equations ?? []) {
      const bare = (words: string) => words.replace(/[_^()]/g, '');
      expect(
        bare(
          stretchesOf(text)
            .map((stretch) => stretch.text)
            .join(''),
        ),
      ).toBe(bare(text));
    }
  }
});
