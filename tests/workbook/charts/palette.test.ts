import { expect, test } from 'vitest';
import { lineStyle } from '../../../workbook/charts/frame/palette';
import { series, tokens } from '../../../workbook/theme/tokens';

/** Relative luminance and contrast as WCAG 2.2 defines them. */
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const c = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}
function contrast(a: string, b: string): number {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (light! + 0.05) / (dark! + 0.05);
}

test.each(series)('$name is seen as a line and read as words on paper', ({ line, text }) => {
  expect(contrast(line, tokens.paper)).toBeGreaterThanOrEqual(3);
  expect(contrast(text, tokens.paper)).toBeGreaterThanOrEqual(4.5);
});

test('words in limits and in grey are read on paper', () => {
  expect(contrast(tokens.limit, tokens.paper)).toBeGreaterThanOrEqual(4.5);
  expect(contrast(tokens.muted, tokens.paper)).toBeGreaterThanOrEqual(4.5);
});

test('lines are told apart by dash as well as by colour', () => {
  const styles = series.map((_, k) => lineStyle(k));
  expect(new Set(styles.map((s) => s.dash)).size).toBe(series.length);
  expect(new Set(styles.map((s) => s.line)).size).toBe(series.length);
});

test('no line looks like the dotted one of the baseline, in black and white either', () => {
  for (const { name, dash } of series) {
    const longest = Math.max(0, ...dash.split(' ').filter(Boolean).map(Number));
    // A dot has no length; a dash is longer than its line is thick.
    if (dash !== '') expect(longest, name).toBeGreaterThan(1.8);
  }
  const { line, text } = series.at(-1)!;
  expect([line, text]).not.toContain(tokens.muted);
});

test('a line more than there are styles begins again', () => {
  expect(lineStyle(series.length)).toEqual(lineStyle(0));
});
