import { expect, test } from 'vitest';
import { numberAt, openLive } from '../../../../engine/sheet/live';
import { library } from '../../../../engine/study/library';
import { newModel } from '../../../../engine/study/place/index';
import { begun, forms } from '../place/begun';

// Racers whose engine stands near the wing among them, and those that are begun in inches or with a battery.
test.each([0, 1, 2, 4, 6, 12, 15, 18].map((k) => [k, forms[k]!] as const))(
  'design %d is begun with the room that is asked for behind its engine, and with its tank ahead of its wing',
  (_, form) => {
    const document = begun(form);
    const piece = newModel('room', library.blocks, { id: 'r', taken: new Set(), fields: {}, isOpen: false });
    const sheets = [...document.sheets, { id: 'room', title: 'Room', pieces: [piece] }];
    const live = openLive({ ...document, sheets }, library);
    expect(numberAt(live, 'room.spare')).toBeGreaterThanOrEqual(0);
    expect(numberAt(live, 'room.tank_wing')).toBeGreaterThanOrEqual(0);
    expect(numberAt(live, 'room.least_gap')).toBeGreaterThanOrEqual(0);
    // Not a needle: the tank is left its usual length where there is room for it.
    const [length, size] = [numberAt(live, 'body.tank_length'), numberAt(live, 'store_size')];
    if (length < 1.99 * size) expect(numberAt(live, 'room.spare')).toBeLessThan(0.1 * size);
  },
);
