import { expect, test } from 'vitest';
import { captionOf } from '../../../workbook/figure/caption';

type Reading = Parameters<typeof captionOf>[1];

const reading = (change: { readonly title?: string; readonly units?: string } = {}): Reading =>
  ({
    document: { value: { title: 'Own stunt', date: '2026-11-28', units: 'metric', ...change } },
    cells: {
      value: [
        { kind: 'parts', name: 'parts' },
        { kind: 'model', of: 'lines', name: 'lines' },
        { kind: 'model', of: 'air', name: 'air' },
      ],
    },
    name: (path: string) => ({
      path,
      title: { 'parts.mass': 'All-up weight', 'lines.length': 'Length' }[path] ?? 'Wind',
    }),
    shown: (path: string) => ({ 'parts.mass': '850 g', 'lines.length': '18.3 m', 'air.density': '–' })[path] ?? '4 m/s',
  }) as unknown as Reading;

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

test('a caption says what is shown, of which design, under which conditions, in which units', () => {
  expect(plain(captionOf(['Pull against line length'], reading()))).toBe(
    'Pull against line length. Own stunt, 2026-11-28: all-up weight 850 g, length 18.3 m, wind 4 m/s. Metric units.',
  );
});

test('several pictures are told by their letters, a question keeps its mark, and a design without a title is called so', () => {
  expect(plain(captionOf(['Which way?', 'Pull'], reading({ title: '', units: 'inch_pound' })))).toBe(
    '(a) Which way? (b) Pull. Untitled design, 2026-11-28: all-up weight 850 g, length 18.3 m, wind 4 m/s. Inch-pound units.',
  );
});
