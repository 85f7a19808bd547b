import { parseHTML } from 'linkedom';
import { expect, test } from 'vitest';
import { aloneFigure } from '../../../workbook/figure/alone';
import { columnWidth, composeFigure, sizeInMm } from '../../../workbook/figure/compose';
import { paperUnderWords, spansOfSigns } from '../../../workbook/figure/pdf-text';

const drawn = (inside: string): SVGSVGElement =>
  parseHTML(
    `<svg role="img" aria-label="Lines." width="300" height="100" viewBox="0 0 300 100" font-size="11" style="display:block">${inside}</svg>`,
  ).document.querySelector('svg') as unknown as SVGSVGElement;
const inner = (svg: Element): string => svg.innerHTML.replaceAll(' />', '/>');

test('a picture stands alone: colours for names, ids of its own, nothing of the page', () => {
  const svg = drawn(
    '<defs><pattern id="hatch"><line stroke="var(--limit, #a8322a)"></line></pattern></defs>' +
      '<rect class="zone" data-zone="a" fill="url(#hatch)"></rect>' +
      '<path fill="var(--paper, #fbf8f0)" stroke="var(--series-ochre, #a8741a)"></path>' +
      '<text y="0.32em" fill="currentColor" tabindex="0">40</text>',
  );
  expect(inner(aloneFigure(svg, 'colour', 'p1-'))).toBe(
    '<defs><pattern id="p1-hatch"><line stroke="#a8322a"/></pattern></defs>' +
      '<rect fill="url(#p1-hatch)"/>' +
      '<path fill="#ffffff" stroke="#a8741a"/>' +
      '<text y="3.52" fill="#22313a">40</text>',
  );
  // The page keeps its own.
  expect(svg.querySelector('rect')!.getAttribute('class')).toBe('zone');
});

test('in black nothing is said by colour or by a tone of grey', () => {
  const svg = drawn(
    '<g stroke="var(--hairline, #dcd6c8)"><line></line></g>' +
      '<rect fill="var(--series-blue, #27598c)" fill-opacity="0.22"></rect>' +
      '<rect fill="var(--series-ochre, #a8741a)"></rect>' +
      '<path data-cloud="0" fill="var(--series-blue, #27598c)" d="M0,0L1,1Z"></path>' +
      '<path data-cloud="1" fill="var(--series-ochre, #a8741a)" d="M0,0L1,1Z"></path>' +
      '<text fill="var(--series-green-text, #3c7350)">green</text>' +
      '<text fill="var(--muted, #5f6a70)" stroke="var(--paper, #fbf8f0)">aside</text>',
  );
  const alone = aloneFigure(svg, 'black', 'p1-');
  const colours = [...alone.querySelectorAll('*')].flatMap((each) =>
    ['fill', 'stroke'].flatMap((name) => each.getAttribute(name) ?? []),
  );
  expect([...new Set(colours)].sort()).toEqual(['#000000', '#ffffff', 'none', 'url(#p1-hatch0)', 'url(#p1-hatch1)']);
  expect(inner(alone)).not.toContain('opacity');
  expect([...alone.querySelectorAll('pattern')].map(({ id }) => id).sort()).toEqual(['p1-hatch0', 'p1-hatch1']);
  expect(alone.querySelector('g')!.getAttribute('stroke-dasharray')).toBe('0.5 3');
});

const page = (count: number, width: number) => {
  const pictures = Array.from({ length: count }, () => aloneFigure(drawn('<text>a</text>'), 'colour', 'p-'));
  return {
    pictures,
    width,
    title: 'Pull',
    caption: 'Pull against line length. Metric units.',
    alt: 'Rises.',
    ink: '#000000',
  };
};

test('a figure is as wide as was asked, says what it is, and has its caption below', () => {
  const svg = composeFigure(page(1, 85));
  expect(sizeInMm(svg)[0]).toBe(85);
  expect(svg.querySelector('title')!.textContent).toBe('Pull');
  expect(svg.querySelector('desc')!.textContent).toBe('Rises.');
  const words = [...svg.querySelectorAll('text')].map(({ textContent }) => textContent);
  expect(words).toEqual(['a', 'Pull against line length. Metric units.']);
  expect(composeFigure(page(1, 85)).outerHTML).toBe(svg.outerHTML);
});

test('several pictures have letters, two beside each other where there is room', () => {
  const wide = composeFigure(page(3, 175));
  const letters = [...wide.querySelectorAll('text[font-weight="700"]')];
  expect(letters.map(({ textContent }) => textContent)).toEqual(['(a)', '(b)', '(c)']);
  const across = letters.map((each) => Number(each.getAttribute('x')));
  expect(across[0]).toBe(across[2]);
  expect(across[1]! - across[0]!).toBe(columnWidth(175, 3) + 16);
  const narrow = composeFigure(page(2, 85));
  expect(
    new Set([...narrow.querySelectorAll('text[font-weight="700"]')].map((each) => each.getAttribute('x'))).size,
  ).toBe(1);
  expect(sizeInMm(narrow)[1]).toBeGreaterThan(sizeInMm(composeFigure(page(1, 85)))[1] * 1.5);
});

test('a picture that is wider than its column is made smaller', () => {
  expect(composeFigure(page(2, 175)).querySelector('g')!.getAttribute('transform')).toMatch(/scale\(1\.0\d+\)$/);
  expect(composeFigure(page(1, 60)).querySelector('g')!.getAttribute('transform')).toMatch(/scale\(0\.7\d+\)$/);
});

test('in a PDF words stand on paper of their own in place of a halo', () => {
  const svg = drawn(
    '<g text-anchor="end"><text stroke="#ffffff" stroke-width="3" paint-order="stroke"><tspan x="50" y="20">now</tspan></text></g>',
  );
  paperUnderWords(svg);
  expect(inner(svg)).toBe(
    '<g text-anchor="end"><rect fill="#ffffff" height="11" width="23.45" y="10.98" x="27.55"/>' +
      '<text><tspan x="50" y="20">now</tspan></text></g>',
  );
});

test('in a PDF a letter that the typeface lacks stands in the one that has it', () => {
  const svg = drawn('<text>η 0.4</text><text>plain</text>');
  spansOfSigns(svg, (letter) => letter !== 'η', 'Signs');
  expect(inner(svg)).toBe(
    '<text><tspan font-weight="400" font-family="Signs">η</tspan><tspan> 0.4</tspan></text><text>plain</text>',
  );
});
