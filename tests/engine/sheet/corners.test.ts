import { describe, expect, it } from 'vitest';
import { sideOutlines } from '../../../engine/blocks/body/fields';
import { cornerAt, cornerKept, cornersText, cornerTexts, readCorners } from '../../../engine/sheet/corners';

const side = sideOutlines.side_outline;

describe('corners of an outline as text', () => {
  it('are one a line, two lengths with a semicolon or a tab between, as fliers write lengths', () => {
    expect(readCorners('-170 mm; 28\n0 mm; 4,5 cm\r\n\n1 1/2 in\t-2 in', side, 'metric')).toEqual({
      ok: true,
      corners: [-0.17, 0.028, 0, 0.045, expect.closeTo(0.0381, 12), expect.closeTo(-0.0508, 12)],
    });
  });
  it('come back as they were typed', () => {
    const text = '−170 mm; 28 mm\n4 1/2 in; 1,25 in';
    expect(cornersText(cornerTexts(text))).toBe(text);
  });
  it('say which of them can’t be read and why', () => {
    const refused = (text: string) => readCorners(text, side, 'metric');
    expect(refused('0; 0\n40 mm\n1; 1')).toEqual({
      ok: false,
      corner: 1,
      message: 'Corner 2 is “40 mm”. A corner is two lengths with a semicolon between them, such as “120 mm; 30 mm”.',
    });
    expect(refused('0; 0\n1; 5 g')).toMatchObject({ ok: false, corner: 1 });
    expect((refused('0; 0\n1; 5 g') as { message: string }).message).toMatch(/^Corner 2, height: /);
    expect(refused('9 m; 0\n1; 1\n2; 2')).toEqual({
      ok: false,
      corner: 0,
      message: 'Corner 1, station: 9000\u00a0mm is not between −2000\u00a0mm and 4000\u00a0mm.',
    });
    expect(refused('0; 0\n10; 10')).toEqual({
      ok: false,
      corner: 2,
      message: 'There are 2 corners; this outline has 3 at least. Add the others, or remove the outline.',
    });
    const many = Array.from({ length: 201 }, (_, k) => `${k}; 0`).join('\n');
    expect(refused(many)).toEqual({
      ok: false,
      corner: 200,
      message: 'There are 201 corners; an outline has 200 at most. Leave some out.',
    });
  });
  it('take the unit that the entry shows, and say a place in it', () => {
    expect(cornerKept('12', side, 'metric')).toBe('12 mm');
    expect(cornerKept('-1.5', side, 'inch_pound')).toBe('-1.5 in');
    expect(cornerKept('3 cm', side, 'inch_pound')).toBe('3 cm');
    expect(cornerAt([0.12345, -0.02], side, 'metric')).toEqual(['123.5 mm', '-20 mm']);
    expect(cornerAt([0.0254, 0.0381], side, 'inch_pound')).toEqual(['1 in', '1.5 in']);
  });
});
