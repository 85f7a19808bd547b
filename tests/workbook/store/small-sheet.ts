import { type Document, VERSION } from '../../../engine/index';
import { onOneSheet } from '../../engine/sheet/one-sheet';

/** A sheet with one of what edits can reach, for tests of the page alone. */
export const smallSheet: Document = {
  format: 'tetherwright',
  version: VERSION,
  title: 'Small sheet',
  drawn: '',
  date: '2026-11-25',
  units: 'metric',
  rows: [],
  figures: ['tip_weight'],
  sheets: onOneSheet([
    { kind: 'note', id: 'c1', name: 'words', title: 'Words', text: 'Set the tip weight.' },
    {
      kind: 'variables',
      id: 'c2',
      name: 'set_these',
      title: 'Set these',
      rows: [
        {
          name: 'tip_weight',
          title: 'tip weight',
          symbol: 'm_t',
          unit: 'g',
          text: '21 g',
          low: '0 g',
          high: '50 g',
          step: '1 g',
        },
        {
          name: 'line_length',
          title: 'line length',
          symbol: 'L',
          unit: 'm',
          text: '18.3 m',
          low: '15 m',
          high: '21.5 m',
          step: '',
        },
      ],
    },
  ]),
};
