import { expect, test } from 'vitest';
import { frameFor, placeAt, project } from '../../../workbook/drawing/frame';
import { quernShapes } from './quern';

test('a point of either view leads back to its place on the model', () => {
  for (const arrangement of ['column', 'strip'] as const) {
    const frame = frameFor(quernShapes(), arrangement, 340)!;
    const plan = placeAt(frame, project(frame, 'plan', 0.47, -0.12));
    expect(plan).toEqual({ x: expect.closeTo(0.47, 12), y: expect.closeTo(-0.12, 12) });
    const side = placeAt(frame, project(frame, 'side', -0.15, 0.03));
    expect(side).toEqual({ x: expect.closeTo(-0.15, 12), z: expect.closeTo(0.03, 12) });
    expect(placeAt(frame, { x: -1, y: 20 })).toBeUndefined();
    expect(placeAt(frame, { x: 20, y: frame.height + 1 })).toBeUndefined();
  }
});
