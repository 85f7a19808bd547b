import { describe, expect, test } from 'vitest';
import type { ChoiceCell, Document } from '../../../engine/sheet/document';
import { faultsOfLive, type Live, openLive, setLive } from '../../../engine/sheet/live';
import { textsOf } from '../../../engine/sheet/paths';
import { blockOf, documentOf, formula, library, part, parts } from './small';

const cordPick = (text: string, change: Partial<ChoiceCell> = {}): ChoiceCell => ({
  kind: 'choice',
  id: 'id_cord_pick',
  name: 'cord_pick',
  title: 'Cord',
  of: 'library',
  table: 'cords',
  columns: [],
  options: ['thin_cord', 'thick_cord'].map((name) => ({ name, title: name, pattern: 'plain' as const })),
  text,
  ...change,
});

const live = (document: Document): Live => openLive(document, library);
const at = ({ compiled, state }: Live, path: string): number => state.m[compiled.program.slotOf.get(path)!]!;
const told = (each: Live): string[] => faultsOfLive(each).map((fault) => `${fault.path}: ${fault.message}`);
const info = ({ compiled }: Live, path: string) => compiled.names.find((name) => name.path === path);

describe('a choice among rows of the library', () => {
  const lines = formula('sums', { wide: 'cord_pick.diameter', woven: 'cord_pick.weave = plaited' });

  test('gives the numbers of the picked row under its own name', () => {
    const before = live(documentOf([cordPick('thin_cord'), lines]));
    expect(told(before)).toEqual([]);
    expect(at(before, 'wide')).toBe(0.0003);
    expect(at(before, 'woven')).toBe(0);
    const after = setLive(before, [['cord_pick', 'thick_cord']], library);
    expect(after.structure).toBe(false);
    expect(at(after.live, 'wide')).toBe(0.0005);
    expect(at(after.live, 'woven')).toBe(1);
    expect(info(before, 'cord_pick.weave')?.options).toEqual(['laid', 'plaited']);
    expect(info(before, 'thick_cord.diameter')?.doc).toBe('invented (recalled, not looked up)');
  });

  test('has no texts but what is picked: the rows are not its own', () => {
    const document = documentOf([cordPick('thin_cord')]);
    expect(textsOf(document)).toEqual([{ path: 'cord_pick', text: 'thin_cord' }]);
  });

  test('can be what a part is made of', () => {
    const woods = ['soft_wood', 'hard_wood'].map((name) => ({ name, title: name, pattern: 'grain' as const }));
    const pick = cordPick('hard_wood', { name: 'wood', table: 'materials', options: woods });
    const row = part('fin', 'sheet', { area: '1 dm²', thickness: '3 mm', material: 'wood', x: '0 mm' });
    const design = live(documentOf([pick, parts([row])]));
    expect(told(design)).toEqual([]);
    expect(at(design, 'parts.fin.mass')).toBeCloseTo(0.01 * 0.003 * 600, 12);
  });

  test('gives a field its own default where a row has no number', () => {
    const pull = (text: string) => live(documentOf([cordPick(text), blockOf('motor', { pull: 'cord_pick.strength' })]));
    expect(at(pull('thin_cord'), 'motor.pull')).toBe(120);
    const blank = pull('thick_cord');
    expect(told(blank)).toEqual([]);
    expect(at(blank, 'motor.pull')).toBe(8);
    const again = setLive(blank, [['cord_pick', 'thin_cord']], library).live;
    expect(told(again)).toEqual([
      'motor.pull: The static pull of motor is 120\u00a0N. Allowed: 0\u00a0N to 100\u00a0N. Type a value within that.',
    ]);
  });

  test('and is a fault of any other formula that needs that number', () => {
    const design = live(documentOf([cordPick('thick_cord'), formula('sums', { half: 'cord_pick.strength / 2' })]));
    expect(told(design)).toEqual([
      'half: half has no value, because the strength of Cord has none: nothing is typed there or nothing is known. Give it a value or leave it out of the formula.',
    ]);
  });

  test('says which table there is none of', () => {
    const design = live(documentOf([cordPick('thin_cord', { table: 'cord' })]));
    expect(told(design)).toEqual([
      'cord_pick: Cord is a choice among rows of “cord”: the library has no such table. Its tables are materials, finishes, cords. Did you mean cords?',
    ]);
  });

  test('says which row there is none of, and minds it only when it is picked', () => {
    const options = ['thin_cord', 'thick_card'].map((name) => ({ name, title: name, pattern: 'plain' as const }));
    const design = live(documentOf([cordPick('thin_cord', { options }), lines]));
    const strange =
      'cord_pick.thick_card: Cord offers “thick_card”: there is no cord of that name. Did you mean thick_cord?';
    expect(told(design)).toEqual([strange]);
    expect(at(design, 'wide')).toBe(0.0003);
    const picked = setLive(design, [['cord_pick', 'thick_card']], library).live;
    expect(told(picked)).toContain('cord_pick: Cord waits for thick_card.');
    expect(at(picked, 'wide')).toBeNaN();
  });
});
