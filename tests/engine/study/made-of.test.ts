import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openText } from '../../../engine/sheet/file';
import { openLive, setLive } from '../../../engine/sheet/live';
import { cellsOf } from '../../../engine/sheet/sheets';
import { massesMadeOf } from '../../../engine/study/design/made-of';
import { library } from '../../../engine/study/index';

const file = new URL('../../designs/quern.tetherwright.json', import.meta.url);
const opened = openText(readFileSync(file, 'utf8'));
if (!opened.ok) throw new Error(opened.message);
const demo = openLive(opened.document, library);

describe('the mass of what is made of a choice', () => {
  it('is what the parts weigh when the option is picked by hand, to the bit', () => {
    const options = ['balsa', 'balsa_ply', 'light_ply'];
    const byHand = options.map((option) => {
      const { compiled, state } = setLive(
        openLive(opened.document, library),
        [['stabiliser_stock', option]],
        library,
      ).live;
      return state.m[compiled.program.slotOf.get('parts.stabiliser.mass')!]!;
    });
    const cell = cellsOf(opened.document).find((each) => each.name === 'stabiliser_stock');
    expect(cell?.kind === 'choice' && cell.options.map(({ name }) => name)).toEqual(options);
    expect(massesMadeOf(demo, 'stabiliser_stock')).toEqual(byHand);
    expect(new Set(byHand).size).toBe(3);
  });

  it('changes nothing of the design', () => {
    const before = demo.state.m.slice();
    massesMadeOf(demo, 'fin_stock');
    expect(demo.state.m).toEqual(before);
  });

  it('is nothing where no part is made of it, or it is no choice', () => {
    expect(massesMadeOf(demo, 'line_set')).toEqual([]);
    expect(massesMadeOf(demo, 'wing')).toEqual([]);
  });
});
