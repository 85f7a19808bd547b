import type { ChartCell } from '../../../engine/index';

/** What each kind of chart is called, and what it is for. */
export const chartKindTexts: Readonly<Record<ChartCell['chart'], { readonly title: string; readonly doc: string }>> = {
  line: { title: 'lines', doc: 'Results along one axis, with a line for each value of another.' },
  bars: { title: 'bars', doc: 'A result for each value of an axis, or a number of every part.' },
  moments: { title: 'moments', doc: 'What the parts hold on the nose and on the tail side of the CG.' },
  contour: { title: 'contours', doc: 'One result over two axes of numbers, as lines along which it is the same.' },
  carpet: { title: 'carpet', doc: 'Results over two axes: every crossing is one design.' },
  scatter: { title: 'scatter', doc: 'A result against another, with a sign for each design.' },
  histogram: { title: 'histogram', doc: 'How many designs come to which value of a result.' },
  shares: { title: 'shares', doc: 'What makes a result uncertain, and how much of it.' },
  ring: { title: 'ring', doc: 'What goes on around the lap, seen from above.' },
  along: {
    title: 'along something',
    doc: 'What runs along something (a run, a glide, a wire, a tank that empties), as lines; what has one unit stands together.',
  },
};

/** Numbers of a part, as `PART_BARS` names them. */
export const partBarTitles: Readonly<Record<string, string>> = {
  mass: 'mass',
  estimate: 'estimated mass',
  difference: 'weighed less estimated',
  moment: 'moment about the CG',
  moment_share: 'share of the moment',
};
