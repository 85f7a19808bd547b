import { expect, test } from 'vitest';
import type { TraceAnswer } from '../../../engine/index';
import { bearingText, readCompass } from '../../../workbook/charts/ring/compass';

const RADIAN = Math.PI / 180;
const column = (name: string) => ({ name, title: name }) as TraceAnswer['columns'][number];
const trace = (angles: readonly number[], bearings: readonly number[]): TraceAnswer =>
  ({
    columns: [column('azimuth'), column('pull'), column('bearing')],
    present: [angles, angles, bearings].map((list) => Float64Array.from(list, (each) => each * RADIAN)),
  }) as unknown as TraceAnswer;

test('anticlockwise flight turns against the compass, clockwise flight with it, through north too', () => {
  const against = readCompass(trace([0, 10, 20], [5, 355, 345]));
  expect(against?.clockwise).toBe(false);
  expect([0, 90, 180].map((a) => bearingText(against!.bearing(a * RADIAN)))).toEqual(['5°', '275°', '185°']);
  const along = readCompass(trace([0, 10, 20], [355, 5, 15]));
  expect(along?.clockwise).toBe(true);
  expect(bearingText(along!.bearing(180 * RADIAN))).toBe('175°');
});

test('what tells no bearing has no compass', () => {
  const { columns, present } = trace([0, 10], [0, 10]);
  expect(readCompass({ columns: columns.slice(0, 2), present } as unknown as TraceAnswer)).toBeUndefined();
});
