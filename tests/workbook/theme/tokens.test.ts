import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { papers, series } from '../../../workbook/theme/tokens';
import { contrast } from './contrast';

const workbook = fileURLToPath(new URL('../../../workbook/', import.meta.url));
const sheet = readFileSync(`${workbook}theme/tokens.css`, 'utf8');

const written = new Map(
  [...sheet.matchAll(/--([\w-]+): light-dark\((#[0-9a-f]{6}), (#[0-9a-f]{6})\);/g)].map(
    ([, name, light, blueprint]) => [name!, { light, blueprint }],
  ),
);
const names = Object.keys(papers.light) as (keyof typeof papers.light)[];

test('the colours of the style sheet and of the code are the same on both papers', () => {
  const fromCode = new Map<string, { light: string; blueprint: string }>(
    names.map((name) => [name, { light: papers.light[name], blueprint: papers.blueprint[name] }] as const),
  );
  for (const { name, line, text, blueprint } of series) {
    fromCode.set(`series-${name}`, { light: line, blueprint });
    fromCode.set(`series-${name}-text`, { light: text, blueprint });
  }
  expect(written).toEqual(fromCode);
});

test('no colour stands anywhere else, so that every one follows the paper', () => {
  const files = readdirSync(workbook, { recursive: true, encoding: 'utf8' }).filter(
    (file) => /\.(css|tsx?)$/.test(file) && !/theme\/(tokens|print)\./.test(file),
  );
  expect(files.length).toBeGreaterThan(100);
  const stray = files.flatMap((file) =>
    [
      ...readFileSync(workbook + file, 'utf8').matchAll(
        /#(?:[0-9a-f]{6}|[0-9a-f]{3})\b(?=[;'" ,)])|\brgba?\(|\bhsla?\(/gi,
      ),
    ].map((found) => `${file}: ${found[0]}`),
  );
  expect(stray).toEqual([]);
});

describe.each(['light', 'blueprint'] as const)('on %s paper', (paper) => {
  const on = papers[paper];
  const lineOf = (each: (typeof series)[number]): string => (paper === 'light' ? each.line : each.blueprint);
  const textOf = (each: (typeof series)[number]): string => (paper === 'light' ? each.text : each.blueprint);

  test.each(['ink', 'muted', 'limit', 'settled', 'focus'] as const)('words in %s are readable', (name) => {
    expect(contrast(on[name], on.paper)).toBeGreaterThanOrEqual(4.5);
  });

  test('words of the sheet are readable on a marked ground too', () => {
    expect(contrast(on.ink, on.hairline)).toBeGreaterThanOrEqual(4.5);
  });

  test.each(series)('the $name line is seen, and words in its tone are readable', (each) => {
    expect(contrast(lineOf(each), on.paper)).toBeGreaterThanOrEqual(3);
    expect(contrast(textOf(each), on.paper)).toBeGreaterThanOrEqual(4.5);
  });

  test('the focus is seen on the paper and on the desk', () => {
    expect(contrast(on.focus, on.paper)).toBeGreaterThanOrEqual(3);
    expect(contrast(on.focus, on.desk)).toBeGreaterThanOrEqual(3);
  });

  test('rules are seen, and stay behind what is drawn', () => {
    expect(contrast(on.rule, on.paper)).toBeGreaterThanOrEqual(1.5);
    expect(contrast(on.rule, on.paper)).toBeLessThan(contrast(on.muted, on.paper));
    expect(contrast(on.hairline, on.paper)).toBeLessThan(contrast(on.rule, on.paper));
  });
});

test('lines differ by dash as well as by colour, in the same order on both papers', () => {
  expect(new Set(series.map((each) => each.dash)).size).toBe(series.length);
  expect(new Set(series.map((each) => each.blueprint)).size).toBe(series.length);
});
