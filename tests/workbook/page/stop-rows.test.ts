import { expect, test } from 'vitest';
import { openText } from '../../../engine/index';
import { library, startEngine } from '../../../engine/study/index';
import { stopRows } from '../../../workbook/page/standing/stop-rows';
import { createSheet } from '../../../workbook/store/sheet';
import demo from '../../designs/quern.tetherwright.json?raw';

/** The small design with another breaking load a line. */
async function withBreakingLoad(text: string) {
  const opened = openText(demo.replace('"line_set.breaking_load"', JSON.stringify(text)));
  if (!opened.ok) throw new Error(opened.message);
  const sheet = createSheet(opened.document, {
    engine: startEngine(library, { pause: () => Promise.resolve(), now: () => 0 }),
    keep: { write() {} },
    loadDemo: async () => '',
    frozen: false,
    now: () => 0,
  });
  await expect.poll(() => sheet.snapshot.value).toBeDefined();
  return sheet;
}

const NOSE = {
  place: { cell: 'c14', path: 'check_nose' },
  ...{ title: 'Nose straight or out', behind: false },
  words: 'stop: 0.33° in is under 0°: nose in: move the leadout guide aft',
};

test('a result under what it may be is a stop with its way and its reason, though no check watches it', async () => {
  const rows = stopRows(await withBreakingLoad('8 N'));
  expect(rows).toEqual([
    NOSE,
    {
      place: expect.objectContaining({ cell: 'c27', path: 'flight.breaking_margin' }),
      ...{ title: 'Breaking load over calm pull', behind: false },
      words: 'stop: 0.618 is under 1: the lines break in level flight',
    },
  ]);
});

test('where the lines hold, the broken check is the only stop', async () => {
  expect(stopRows(await withBreakingLoad('150 N'))).toEqual([NOSE]);
});
