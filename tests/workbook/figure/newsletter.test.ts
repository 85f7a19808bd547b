import { parseHTML } from 'linkedom';
import { expect, test } from 'vitest';
import { sizeInMm } from '../../../workbook/figure/compose';
import { figureWidth, mmOf, newsletterPage } from '../../../workbook/figure/newsletter/page';
import { printedWords, textFile } from '../../../workbook/figure/newsletter/words';

const picture = (): SVGSVGElement =>
  parseHTML(
    '<svg width="300" height="100" viewBox="0 0 300 100" font-size="11"><path d="M0,0L1,1"></path></svg>',
  ).document.querySelector('svg') as unknown as SVGSVGElement;
const page = (widthMm: number, count: number) =>
  newsletterPage({
    ...{ title: 'Pull in a wind', words: ['The lines pull 25 N in calm air.', 'In wind they pull less.'], widthMm },
    figures: Array.from({ length: count }, (_, k) => ({ picture: picture(), caption: `Figure ${k + 1}.` })),
    ...{ ink: '#000', alt: 'All of it.' },
  });
const texts = (svg: SVGSVGElement): readonly string[] =>
  [...svg.querySelectorAll('text')].map((text) => text.textContent!);
const places = (svg: SVGSVGElement): readonly number[][] =>
  [...svg.querySelectorAll('g')].map((g) =>
    /translate\(([\d.]+),([\d.]+)\)/.exec(g.getAttribute('transform')!)!.slice(1).map(Number),
  );

test('on a column of 85 mm the pictures stand below each other, each with its caption, under title and words', () => {
  const svg = page(85, 2);
  expect(sizeInMm(svg)[0]).toBe(85);
  expect(texts(svg)).toEqual([
    'Pull in a wind',
    'The lines pull 25 N in calm air.',
    'In wind they pull less.',
    'Figure 1.',
    'Figure 2.',
  ]);
  const [first, second] = places(svg);
  expect(first![0]).toBe(second![0]);
  expect(second![1]! - first![1]!).toBeGreaterThan(100);
  expect(svg.querySelector('desc')!.textContent).toBe('All of it.');
});

test('on 175 mm two stand side by side and a third below them', () => {
  const [first, second, third] = places(page(175, 3));
  expect(second![0]!).toBeGreaterThan(first![0]! + figureWidth(175));
  expect(second![1]).toBe(first![1]);
  expect(third![0]).toBe(first![0]);
  expect(third![1]!).toBeGreaterThan(first![1]! + 50);
});

test('a column is about as wide on either page, and so is a picture by itself', () => {
  expect([figureWidth(85), figureWidth(175)]).toEqual([317, 320]);
  expect(mmOf(figureWidth(85))).toBeLessThanOrEqual(85);
});

test('words are printed with the numbers of the design and without marks', () => {
  const sheet = {
    name: (path: string) => (path === 'flight.pull' ? { path } : undefined),
    shown: (path: string) => ({ 'flight.pull': '25 N', 'reading.said2': '50 N' })[path] ?? '–',
  } as unknown as Parameters<typeof printedWords>[1];
  const text =
    '# Pull\n\nThe lines **pull** {flight.pull},\ntwice that is {2 × flight.pull}.\n\n- see [the rules](https://example.org) \\{here\\}\n';
  expect(printedWords({ name: 'reading', text }, sheet).map((each) => each.replaceAll('\u00a0', ' '))).toEqual([
    'Pull',
    'The lines pull 25 N, twice that is 50 N.',
    '- see the rules {here}',
  ]);
  expect(printedWords({ name: 'reading', text: '' }, sheet)).toEqual([]);
});

test('the text file says which caption belongs to which picture', () => {
  expect(textFile('Pull', ['One.', 'Two.'], [{ file: 'pull-figure-1.png', caption: 'Pull against length.' }])).toBe(
    'Pull\n\nOne.\n\nTwo.\n\npull-figure-1.png\nPull against length.\n',
  );
});
