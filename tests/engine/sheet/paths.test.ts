import { describe, expect, test } from 'vitest';
import { baselineOf, withText } from '../../../engine/sheet/baseline';
import { compile } from '../../../engine/sheet/compile';
import { putText, textAt, textsOf } from '../../../engine/sheet/paths';
import { library, smallDesign } from './small';

const rows = [{ table: 'materials', name: 'foam', title: 'Foam', source: 'weighed', values: { density: '30 kg/m³' } }];
const design = { ...smallDesign(), rows };

describe('a text', () => {
  const here: Readonly<Record<string, string>> = {
    tip_weight: '21 g',
    'tip_weight.low': '0',
    'tip_weight.high': '50',
    'tip_weight.step': '',
    tail_stock: 'soft',
    'tail_stock.faced.core': '3 mm',
    'tail_stock.faced.core.material': 'soft_wood',
    cord_set: 'thin',
    'cord_set.thick.strength': '2 * 130 N',
    'motor.station': 'engine_station',
    'motor.lost': '',
    'parts.fuel': '0.5',
    'parts.fin.area': '90',
    'parts.fin.material': 'hard_wood',
    'parts.fin.weighed': '',
    reserve: 'cord_set.strength / lap.pull',
    cg_band: 'parts.x',
    'cg_band.low': '38 mm',
    'cg_sweep.axis2.low': '',
    'foam.density': '30 kg/m³',
    'foam.modulus': '',
  };
  for (const [path, text] of Object.entries(here)) {
    test(`stands at ${path} and can be replaced there`, () => {
      expect(textAt(design, path)).toBe(text);
      const changed = withText(design, path, '7 mm')!;
      expect(textAt(changed, path)).toBe('7 mm');
      const others = textsOf(design).filter((each) => each.path !== path);
      for (const each of others) expect(textAt(changed, each.path), each.path).toBe(each.text);
      expect(withText(changed, path, text)).toEqual(design);
    });
  }
  for (const path of [
    '',
    'gone',
    'set_these',
    'tip_weight.middle',
    'tail_stock.hard',
    'tail_stock.soft',
    'cord_set.thin.price',
  ]) {
    test(`can't stand at "${path}"`, () => {
      expect(textAt(design, path)).toBeUndefined();
      expect(withText(design, path, '1')).toBeUndefined();
    });
  }
  test('can not stand deeper than a field', () => {
    for (const path of ['lap.height.low', 'parts.fin', 'parts.fin.colour', 'parts.gone.mass', 'soft_wood.density']) {
      expect(textAt(design, path), path).toBeUndefined();
    }
  });
});

test('every text that is listed is read from the same place', () => {
  for (const { path, text } of textsOf(design)) expect(textAt(design, path), path).toBe(text);
});

test('whatever a compiled document calls settable can be set', () => {
  const { names } = compile(design, library);
  const settable = names.filter((name) => name.settable);
  expect(settable.length).toBeGreaterThan(100);
  for (const { path } of settable) expect(putText(design, path, 'x'), path).toBeDefined();
});

test('the baseline is the design with its texts, and passes over what is gone', () => {
  expect(baselineOf(design)).toBeUndefined();
  const baseline = { tip_weight: '12 g', 'parts.gone.mass': '3 g' };
  const before = baselineOf({ ...design, baseline })!;
  expect(textAt(before, 'tip_weight')).toBe('12 g');
  expect(before.baseline).toBeUndefined();
});
