import { expect, test } from 'vitest';
import { movedShapes } from '../../../workbook/drawing/ghost';
import { quernShapes } from './quern';

const parts = (shapes: ReturnType<typeof quernShapes>): string[] => shapes.map((s) => `${s.view} ${s.part}`);

test('only what stands elsewhere is ghosted', () => {
  const ghost = movedShapes(quernShapes({ engine: -0.14, cg: 0.049 }), quernShapes());
  expect(parts(ghost)).toEqual([
    'plan engine',
    'plan propeller',
    'plan engine_station',
    'plan cg',
    'side engine',
    'side propeller',
    'side cg',
  ]);
});

test('a shift too small to see is none', () => {
  expect(movedShapes(quernShapes({ cg: 0.0461 }), quernShapes())).toEqual([]);
});

test('a part that is gone from the present design is ghosted', () => {
  const without = quernShapes().filter((s) => s.part !== 'tank');
  expect(parts(movedShapes(without, quernShapes()))).toEqual(['plan tank']);
});

test('a smaller wheel is a moved wheel', () => {
  const smaller = quernShapes().map((s) => (s.part === 'wheel' && s.radius ? { ...s, radius: 0.02 } : s));
  expect(parts(movedShapes(smaller, quernShapes()))).toEqual(['side wheel']);
});
