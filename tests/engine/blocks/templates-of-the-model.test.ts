import { describe, expect, it, test } from 'vitest';
import { controlTemplate } from '../../../engine/blocks/control/template';
import { bearersTemplate, travelTemplate } from '../../../engine/blocks/engines/template';
import type { Template, TemplateHole, TemplateLine } from '../../../engine/blocks/template';
import { ribOutline, wingTemplates } from '../../../engine/blocks/wing/template';

const lines = (template: Template | undefined, view: number, is: TemplateLine['is']): readonly TemplateLine[] =>
  template!.views[view]!.marks.filter((mark): mark is TemplateLine => mark.is === is);
const holes = (template: Template | undefined, view: number) =>
  template!.views[view]!.marks.filter((mark): mark is TemplateHole => mark.is === 'hole').map(({ at }) => at);
const near = (...place: readonly number[]) => place.map((value) => expect.closeTo(value, 12));

const engine = { station: -0.13, outboard: 0.004, sideThrust: 0, length: 0.06, width: 0.034 };

describe('bearers', () => {
  it('reach from front to rear over the lugs, with the engine on them and at their rear', () => {
    const [bearers] = bearersTemplate(engine, -0.18, -0.06);
    const [box, now] = lines(bearers, 0, 'cut');
    expect(box!.points).toEqual([near(-0.18, -0.013), near(-0.06, -0.013), near(-0.06, 0.021), near(-0.18, 0.021)]);
    expect(now!.points[0]).toEqual(near(-0.16, -0.013));
    expect(holes(bearers, 0)).toEqual([near(-0.13, 0.004), near(-0.09, 0.004)]);
    // Its backplate at the rear of the bearers.
    expect(lines(bearers, 0, 'bend')[0]!.points[1]).toEqual(near(-0.06, -0.013));
  });
  it('have an engine that points outboard turned about its station, its length as it was', () => {
    const [bearers] = bearersTemplate({ ...engine, sideThrust: 0.05 }, -0.18, -0.06);
    const [a, b] = lines(bearers, 0, 'cut')[1]!.points;
    expect(Math.hypot(b![0] - a![0], b![1] - a![1])).toBeCloseTo(0.06, 12);
    expect((a![1] - b![1]) / (b![0] - a![0])).toBeCloseTo(Math.tan(0.05), 12);
    expect(holes(bearers, 0)[0]).toEqual(near(-0.13, 0.004));
  });
  it('show how far the room behind it lets the engine go', () => {
    const [travel] = travelTemplate(engine, -0.06, -0.12);
    expect(holes(travel, 0)).toEqual([near(-0.13, 0.004), near(-0.12, 0.004)]);
    expect(travelTemplate(engine, -0.06, Number.NaN)).toEqual([]);
    expect(bearersTemplate({ ...engine, length: Number.NaN }, -0.18, -0.06)).toEqual([]);
  });
});

test('bellcrank and horn have their holes at their arms', () => {
  const arms = {
    ...{ front: 0.038, rear: 0.036, inboard: 0.002, pushrod: 0.019, pushrodDirection: Math.PI / 2 },
    ...{ horn: 0.025, hornDirection: -Math.PI / 2, rod: 0.4 },
  };
  const [template] = controlTemplate(arms);
  expect(holes(template, 0)).toEqual([near(0, 0), near(-0.038, -0.002), near(0.036, -0.002), near(0, 0.019)]);
  expect(holes(template, 1)).toEqual([near(0, 0), near(0, -0.025)]);
  expect(controlTemplate({ ...arms, rod: Number.NaN })).toEqual([]);
});

describe('ribs', () => {
  it('are as thick as the section, with the camber of its family and corners near enough for a smooth edge', () => {
    for (const camber of [0, 0.02, 0.04]) {
      const points = ribOutline(0.2, 0.12, camber);
      const half = (points.length - 1) / 2;
      // Report 460: thickest 12 % at three tenths, most camber at four tenths of the chord.
      const thick = points.slice(0, half + 1).map(([u, v], k) => {
        const [below, low] = points[points.length - 1 - k]!;
        return Math.hypot(u - below, v - low);
      });
      expect(Math.max(...thick)).toBeCloseTo(0.2 * 0.12, 4);
      const middles = points.map(([, v], k) => (v + points[points.length - 1 - k]![1]) / 2);
      expect(Math.max(...middles)).toBeCloseTo(camber * 0.2, 5);
      expect(points[half]).toEqual(near(0, 0));
      for (const [k, [u, v]] of points.slice(1).entries()) {
        expect(Math.hypot(u - points[k]![0], v - points[k]![1])).toBeLessThan(0.0045);
      }
    }
  });
  it('and panels are as long as those of the wing', () => {
    const wing = {
      ...{ inboardSpan: 0.5, outboardSpan: 0.48, rootChord: 0.23, inboardTipChord: 0.2, outboardTipChord: 0.18 },
      ...{ inboardSweep: 0.1, outboardSweep: 0, thickness: 0.15, incidence: 0 },
    };
    const [ribs, inboard, outboard] = wingTemplates(wing, 0);
    expect(ribs!.views.map(({ title }) => title)).toEqual([
      'Rib at the root',
      'Rib at the inboard tip',
      'Rib at the outboard tip',
    ]);
    expect(lines(inboard, 0, 'cut')[0]!.points[1]).toEqual(near(0.5 * Math.tan(0.1), -0.5));
    expect(lines(outboard, 0, 'cut')[0]!.points[2]).toEqual(near(0.18, 0.48));
    expect(wingTemplates({ ...wing, outboardTipChord: 0.2 }, 0)[0]!.views).toHaveLength(2);
    expect(wingTemplates({ ...wing, rootChord: Number.NaN }, 0)).toEqual([]);
  });
});
