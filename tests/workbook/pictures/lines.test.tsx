import { render } from 'preact';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { lineColumns } from '../../../engine/blocks/line-shape/traces';
import type { TraceAnswer } from '../../../engine/index';
import { LinesFigure } from '../../../workbook/pictures/lines-figure';
import { type LinesShown, layOutLines } from '../../../workbook/pictures/lines-layout';
import { linesCaption, linesTable } from '../../../workbook/pictures/lines-words';
import { openPage, type Page } from '../drawing/page';

const PLACES = 9;
/** A line of 18.3 m from 0.6 m, bowed by parabolas: invented. */
function arrays(slope: number, back: number, down: number): Float64Array[] {
  const each = (value: (share: number) => number): Float64Array =>
    Float64Array.from({ length: PLACES }, (_, k) => value(k / (PLACES - 1)));
  const bow = (share: number): number => 4 * share * (1 - share);
  const slant = (share: number): number => 0.6 + 18.3 * share;
  const columns: Record<string, Float64Array> = {
    distance: each((share) => 18.3 * share),
    radius: each((share) => slant(share) * Math.cos(slope) + down * bow(share) * Math.sin(slope)),
    height: each((share) => slant(share) * Math.sin(slope) - down * bow(share) * Math.cos(slope)),
    behind: each((share) => back * bow(share) + 0.01 * (1 - share)),
    back: each((share) => back * bow(share)),
    down: each((share) => down * bow(share)),
    trail: each((share) => 0.055 * share ** 3),
    slope: each(() => slope),
    tension: each((share) => 26.1 - 0.4 * share),
  };
  return Object.keys(lineColumns).map((name) => columns[name]!);
}

const numbers = (bow_back: number, bow_down: number) => ({
  ...{ handle_trail: 0.018, line_trail: 0.055, pull_at_handle: 26.1 },
  ...{ bow_back, bow_down },
});
function shown(slope = 0.08, changes: Partial<LinesShown> = {}): LinesShown {
  const trace: TraceAnswer = {
    ...{ revision: 1, path: 'line_shape.line', title: 'Along the lines', doc: '' },
    columns: Object.entries(lineColumns).map(([name, column]) => ({ ...column, name, suffix: '' })),
    present: arrays(slope, 0.16, 0.024),
  };
  return { trace, now: numbers(0.16, 0.024), cgRadius: 19.425, guideTrail: 0.016, clockwise: false, ...changes };
}

describe('layout of the lines', () => {
  it.each([320, 560, 770])('draws both views in one scale and within %i pixels', (width) => {
    const { plan, side, height } = layOutLines(shown(), width);
    const across = (view: typeof plan): number => view.guide.x - view.axis.x;
    expect(across(plan)).toBeCloseTo(across(side), 6);
    // The slope of the radius is true.
    expect((side.axis.y - side.guide.y) / across(side)).toBeCloseTo(Math.tan(0.08), 6);
    for (const { x, y } of [...plan.line, ...side.line, plan.cg, side.cg]) {
      expect(x).toBeGreaterThan(0);
      expect(x).toBeLessThan(width - 20);
      expect(y).toBeGreaterThan(0);
      expect(y).toBeLessThan(height);
    }
    expect(Math.max(...plan.line.map(({ y }) => y))).toBeLessThan(side.top);
  });

  it('draws the bow as many times as it says', () => {
    for (const width of [320, 770]) {
      const { plan, side } = layOutLines(shown(), width);
      const scale = (plan.guide.x - plan.axis.x) / (18.9 * Math.cos(0.08));
      for (const [view, bow] of [
        [plan, 0.16],
        [side, 0.024],
      ] as const) {
        const drawn = Math.hypot(view.bow.at.x - view.bow.from.x, view.bow.at.y - view.bow.from.y);
        expect(drawn / (bow * scale * view.times)).toBeCloseTo(1, 2);
        expect(view.heading.join(' ')).toContain(`the bow drawn ${view.times} times`);
        expect(drawn).toBeGreaterThan(10);
      }
    }
  });

  it('bows down the sheet in counter-clockwise flight and up it in clockwise flight', () => {
    const there = layOutLines(shown(), 560);
    const back = layOutLines(shown(0.08, { clockwise: true }), 560);
    expect(there.plan.bow.at.y).toBeGreaterThan(there.plan.guide.y);
    expect(there.plan.cg.y).toBeLessThan(there.plan.guide.y);
    expect(back.plan.bow.at.y).toBeLessThan(back.plan.guide.y);
    expect(back.plan.cg.y).toBeGreaterThan(back.plan.guide.y);
    expect([there.plan.guideSide, back.plan.guideSide]).toEqual([-1, 1]);
    // Down is down in both.
    expect(back.side.bow.at.y).toBeGreaterThan(back.side.bow.from.y);
  });

  it('keeps a steep line within a fair height, and words out of its way', () => {
    const steep = layOutLines(shown(1.1), 770);
    expect(steep.height).toBeLessThan(500);
    expect(steep.side.pilotSide).toBe(1);
    const low = layOutLines(shown(-0.05), 770);
    expect([low.side.guideSide, low.side.pilotSide]).toEqual([1, -1]);
  });

  it('holds its factor while the bow moves a little, and takes another when it must', () => {
    const before = layOutLines(shown(), 560);
    const grown = (factor: number): LinesShown => {
      const of = shown();
      return { ...of, trace: { ...of.trace, present: arrays(0.08, 0.16 * factor, 0.024 * factor) } };
    };
    expect(layOutLines(grown(1.2), 560, before).plan.times).toBe(before.plan.times);
    expect(layOutLines(grown(12), 560, before).plan.times).toBeLessThan(before.plan.times);
  });

  it('leaves room for a baseline that reaches further', () => {
    const of = shown(1.1);
    const both = layOutLines({ ...of, trace: { ...of.trace, baseline: arrays(0.05, 0.17, 0.03) } }, 560);
    for (const { x } of both.plan.baseline) expect(x).toBeLessThan(560);
    expect(both.plan.baseline).toHaveLength(PLACES);
  });
});

describe('words of the lines', () => {
  it('say what to see', () => {
    const of = shown();
    expect(linesCaption(of)).toEqual([
      'Between handle and guide the lines bow 160\u00a0mm back and 24\u00a0mm down.',
      'They trail by 3.15° at the guide; the arm points 1.03° behind the model.',
      'The tension of all lines grows from 25.7\u00a0N at the guide to 26.1\u00a0N at the handle.',
      'Flight runs up the plan, counter-clockwise seen from above.',
    ]);
    const then = { trace: { ...of.trace, baseline: arrays(0.08, 0.17, -0.002) }, baseline: numbers(0.17, -0.002) };
    expect(linesCaption({ ...of, ...then, clockwise: true }).slice(3)).toEqual([
      'Flight runs down the plan, clockwise seen from above.',
      'Dotted: baseline, 170\u00a0mm back and 2\u00a0mm up.',
    ]);
  });

  it('list every number', () => {
    const { head, rows } = linesTable(shown());
    expect(head[0]![0]!.text).toBe('Along the line, m');
    expect(head[0]).toHaveLength(Object.keys(lineColumns).length);
    expect(rows).toHaveLength(PLACES);
    expect(rows[4]!.cells).toHaveLength(Object.keys(lineColumns).length - 1);
    expect(rows[4]!.cells).toContain('160');
  });
});

describe('picture of the lines', () => {
  let page: Page;
  beforeEach(() => {
    page = openPage();
  });
  afterEach(() => render(null, page.body));

  it.each([320, 560])('names handle, guide and CG and both bows at %i pixels', (width) => {
    render(<LinesFigure {...shown()} title="Lines" width={width} />, page.body);
    const text = page.body.textContent!;
    for (const word of ['pilot, handle', 'arm 1.03° behind', 'guide', 'trail 3.15°', '1.51\u00a0m up', 'CG'])
      expect(text).toContain(word);
    expect(page.body.querySelector('[data-bow="plan"]')!.textContent).toBe('160\u00a0mm');
    expect(page.body.querySelector('[data-bow="side"]')!.textContent).toBe('24\u00a0mm');
    expect(page.body.querySelector('[data-line="baseline"]')).toBeNull();
    expect(page.body.innerHTML).not.toContain('NaN');
  });
});
