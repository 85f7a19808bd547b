import { describe, expect, test } from 'vitest';
import { openLive, setLive } from '../../../engine/sheet/live';
import { library } from '../../../engine/study/library';
import { MEASURINGS, measuredFrom } from '../../../workbook/library/measured';
import { documentOf, part, parts } from '../../engine/sheet/small';

const sheet = (typed: Record<string, string>, set: 'metric' | 'inch_pound' = 'metric') =>
  measuredFrom(MEASURINGS.materials!, typed, set);
const coat = (typed: Record<string, string>) => measuredFrom(MEASURINGS.finishes!, typed, 'metric');

describe('a sheet on the scale', () => {
  const SHEET = { mass: '17.8', length: '915', width: '76', thickness: '1.6' };
  test('gives its density, and says from what', () =>
    expect(sheet(SHEET)).toEqual({
      ok: true,
      formula: '17.8 g ÷ (915 mm × 76 mm × 1.6 mm)',
      source: 'weighed: 17.8 g, 915 mm × 76 mm × 1.6 mm',
      shown: '160\u00a0kg/m³',
    }));
  test('in inches and ounces, several at once', () =>
    expect(sheet({ mass: '3.1', length: '36', width: '3', thickness: '1/16', count: '5' }, 'inch_pound')).toEqual({
      ok: true,
      formula: '3.1 oz ÷ (5 × 36 in × 3 in × 1/16 in)',
      source: 'weighed: 5 sheets, 3.1 oz, 36 in × 3 in × 1/16 in',
      shown: '9.92\u00a0lb/ft³',
    }));
  test('waits while something is not typed yet, and says what is wrong', () => {
    expect(sheet({ mass: '17.8' })).toEqual({ ok: false, faults: [] });
    expect(sheet({ ...SHEET, width: '0' })).toEqual({ ok: false, faults: ['Width is “0”. Type more than nothing.'] });
    const wrong = sheet({ ...SHEET, thickness: '1.6 g' });
    expect(wrong.ok || wrong.faults[0]).toMatch(/^Thickness: /);
  });
});

describe('a weighing before and after', () => {
  test('gives what a square metre took, for one coat', () => {
    expect(coat({ before: '12.4 g', after: '13,2 g', area: '400' })).toEqual({
      ok: true,
      formula: '(13.2 g - 12.4 g) ÷ 400 cm²',
      source: 'weighed before and after: 12.4 g, 13.2 g on 400 cm²',
      shown: '20\u00a0g/m²',
    });
    expect(coat({ before: '12.4', after: '13.2', area: '400', count: '2' })).toMatchObject({
      formula: '(13.2 g - 12.4 g) ÷ (2 × 400 cm²)',
      source: 'weighed before and after: 12.4 g, 13.2 g on 400 cm², 2 coats',
      shown: '10\u00a0g/m²',
    });
  });
  test('that is no heavier after is looked at again', () =>
    expect(coat({ before: '13', after: '12', area: '400' })).toEqual({
      ok: false,
      faults: ['It weighs no more after than before. Look at both readings.'],
    }));
});

test('a row of one’s own takes the formula as it stands', () => {
  const measured = sheet({ mass: '17.8', length: '915', width: '76', thickness: '1.6' });
  const density = measured.ok ? measured.formula : '';
  const rows = [{ table: 'materials', name: 'mine', title: 'Mine', source: 'weighed', values: { density } }];
  const fin = part('fin', 'sheet', { area: '1 dm²', thickness: '1 mm', material: 'mine', x: '0 mm' });
  const { compiled, state } = setLive(openLive(documentOf([parts([fin])], { rows }), library), [], library).live;
  const mass = state.m[compiled.program.slotOf.get('parts.fin.mass')!]!;
  expect(mass).toBeCloseTo((0.0178 / (0.915 * 0.076 * 0.0016)) * 1e-5, 12);
});
