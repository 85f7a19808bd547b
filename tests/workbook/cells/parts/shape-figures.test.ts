import { describe, expect, test } from 'vitest';
import { PART_SHAPES, partFields } from '../../../../engine/index';
import {
  behindLeader,
  besideDimension,
  FIGURE_WIDTH,
  SHAPE_FIGURES,
  type WordsPlace,
} from '../../../../workbook/cells/parts/shape-figures';
import { LABEL_SIZE, textWidth } from '../../../../workbook/drawing/index';

/** As long as a size of a model gets: a mixed fraction of an inch; a share. */
const LONG: Readonly<Record<string, string>> = {
  mm: '11 27/32 in',
  '%': '12.5 %',
  g: '',
  'cm²': '1 234 in²',
  'cm³': '1 234 in³',
};

describe.each(PART_SHAPES)('the picture of %s', (shape) => {
  const { dimensions, leaders = [], height, outlines } = SHAPE_FIGURES[shape];
  const places: readonly (WordsPlace & { of: string })[] = [
    ...dimensions.map((each) => ({ of: each.of, ...besideDimension(each) })),
    ...leaders.map((each) => ({ of: each.of, ...behindLeader(each) })),
  ];
  const boxes = places.map(({ of, at, anchor }) => {
    const field = partFields(shape).find(({ name }) => name === of)!;
    const width = textWidth(`${field.symbol} ${LONG[field.unit]}`, LABEL_SIZE);
    const left = anchor === 'start' ? at.x : anchor === 'end' ? at.x - width : at.x - width / 2;
    return { left, right: left + width, top: at.y - 0.8 * LABEL_SIZE, bottom: at.y + 0.2 * LABEL_SIZE };
  });
  test('shows each of its sizes once', () => {
    const fields = partFields(shape);
    const sizes = fields.slice(
      0,
      fields.findIndex(({ name }) => name === 'count'),
    );
    const shown = [...dimensions, ...leaders].map(({ of }) => of);
    expect(shown.toSorted()).toEqual(
      sizes
        .filter(({ dimension }) => dimension)
        .map(({ name }) => name)
        .toSorted(),
    );
    expect(outlines.length).toBeGreaterThan(0);
  });
  test('has room for long numbers, and none stands on another', () => {
    for (const [k, box] of boxes.entries()) {
      expect(box.left).toBeGreaterThanOrEqual(0);
      expect(box.right).toBeLessThanOrEqual(FIGURE_WIDTH);
      expect(box.top).toBeGreaterThanOrEqual(0);
      expect(box.bottom).toBeLessThanOrEqual(height);
      for (const other of boxes.slice(k + 1)) {
        const apart =
          box.right <= other.left || other.right <= box.left || box.bottom <= other.top || other.bottom <= box.top;
        expect(apart, `${JSON.stringify(box)} on ${JSON.stringify(other)}`).toBe(true);
      }
    }
  });
});
