import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { series, tokens } from '../../../workbook/theme/tokens';

const sheet = readFileSync(new URL('../../../workbook/theme/tokens.css', import.meta.url), 'utf8');

/** Relative luminance and contrast of WCAG 2.2. */
function luminance(colour: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
function contrast(a: string, b: string): number {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

test('the tokens of the style sheet and of the code are the same', () => {
  const written = Object.fromEntries([...sheet.matchAll(/--(\w+): (#[0-9a-f]{6});/g)].map((m) => [m[1], m[2]]));
  expect(written).toEqual(tokens);
});

test('words are readable on paper', () => {
  for (const colour of [tokens.ink, tokens.muted, tokens.limit, tokens.settled, ...series.map((s) => s.text)]) {
    expect(contrast(colour, tokens.paper), colour).toBeGreaterThanOrEqual(4.5);
  }
});

test('lines differ by dash as well as by colour', () => {
  expect(new Set(series.map((s) => s.dash)).size).toBe(series.length);
});
