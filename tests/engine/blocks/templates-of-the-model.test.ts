import { describe, expect, it, test } from 'vitest';
import { controlTemplate } from '../../../engine/blocks/control/template';
import { bearersTemplate } from '../../../engine/blocks/engines/template';
import type { Template, TemplateHole, TemplateLine } from '../../../engine/blocks/template';
import { ribOutline, wingTemplates } from '../../../engine/blocks/wing/template';

const lines = (template: Template | undefined, view: number, is: TemplateLine['is']): readonly TemplateLine[] =>
  template!.views[view]!.marks.filter((mark): mark is TemplateLine => mark.is === is);
const holes = (template: Template | undefined, view: number) =>
  template!.views[view]!.marks.filter((mark): mark is TemplateHole => mark.is === 'hole').map(({ at }) => at);
const near = (...place: readonly number[]) => place.map((value) => expect.closeTo(value, 12));

const engine = { station: -0.13, outboard: 0.004, sideThrust: 0, length: 0.06, width: 0.034 };

const blank = {
  ...{ front: -0.18, rear: -0.06, gap: Number.NaN, rearmost: Number.NaN },
  holes: { along: Number.NaN, across: Number.NaN, diameter: Number.NaN, aft: 0 },
};
const measured = { ...blank, gap: 0.024, holes: { along: 0.016, across: 0.029, diameter: 0.003, aft: 0.005 } };
const words = (template: Template | undefined, view: number) =>
  template!.views[view]!.marks.flatMap((mark) =>
    mark.is === 'words' ? [[mark.words, ...(mark.figures ?? []).map(({ value }) => value)]] : [],
  );
const notes = (template: Template | undefined) => template!.notes.map((note) => note.words);

describe('bearers with engine travel', () => {
  it('of an engine whose size alone is known reach over its lugs, and it goes aft to their rear', () => {
    const [bearers] = bearersTemplate(engine, blank);
    const [box, now] = lines(bearers, 0, 'cut');
    expect(box!.points).toEqual([near(-0.18, -0.013), near(-0.06, -0.013), near(-0.06, 0.021), near(-0.18, 0.021)]);
    expect(now!.points[0]).toEqual(near(-0.16, -0.013));
    expect(holes(bearers, 0)).toEqual([near(-0.13, 0.004), near(-0.09, 0.004)]);
    // Its backplate at the rear of the bearers.
    expect(lines(bearers, 0, 'bend')[0]!.points[1]).toEqual(near(-0.06, -0.013));
    expect(words(bearers, 0)[0]).toEqual(['Aft {}', expect.closeTo(0.04, 12)]);
    expect(notes(bearers)).toEqual(
      expect.arrayContaining([
        'Type “Gap between the bearers” in the engine piece to have two bearers with the crankcase between.',
        'Type how far the lug holes are apart, fore and aft and across, and their diameter in the engine piece to have them here, and how far forward the engine goes.',
        'Aft it goes until its backplate is at the rear of the bearers. The piece “Room along the body” tells what needle valve, tube and tank leave of that.',
      ]),
    );
  });
  it('are two with their gap, drilled where the lugs are, with the travel aft and forward marked and told', () => {
    const [bearers] = bearersTemplate(engine, { ...measured, rearmost: -0.12 });
    const [inner, outer] = lines(bearers, 0, 'cut');
    expect(inner!.points).toEqual([near(-0.18, -0.013), near(-0.06, -0.013), near(-0.06, -0.008), near(-0.18, -0.008)]);
    expect(outer!.points).toEqual([near(-0.18, 0.016), near(-0.06, 0.016), near(-0.06, 0.021), near(-0.18, 0.021)]);
    // The middle of the holes 5 mm aft of that of the engine.
    expect(holes(bearers, 0).slice(1, 5)).toEqual([
      ...[near(-0.133, -0.0105), near(-0.133, 0.0185)],
      ...[near(-0.117, -0.0105), near(-0.117, 0.0185)],
    ]);
    // Forward until 3 mm of wood are left ahead of holes of 3 mm: their middles at -175.5 mm, 3 mm ahead of that of the engine.
    expect(holes(bearers, 0).slice(5)).toEqual([near(-0.12, 0.004), near(-0.1725, 0.004)]);
    expect(words(bearers, 0)).toEqual([
      ['Aft {}', expect.closeTo(0.01, 12)],
      ['Forward {}', expect.closeTo(0.0425, 12)],
      ['Bearers from {} to {}', -0.18, -0.06],
      ['Gap between them {}, {} over both', 0.024, 0.034],
      ['Engine at {}, dashed at {} where it is furthest aft', -0.13, -0.12],
      ['and at {} where it is furthest forward', expect.closeTo(-0.1725, 12)],
      ['Lug holes {} apart fore and aft, {} across, {} wide', 0.016, 0.029, 0.003],
    ]);
    const told = lines(bearers, 0, 'thin').filter(({ points: [a, b] }) => a![1] === b![1]);
    expect(told.map(({ points }) => points.map(([x]) => x))).toEqual([near(-0.13, -0.12), near(-0.13, -0.1725)]);
    expect(notes(bearers).filter((each) => each.startsWith('Type'))).toEqual([]);
    expect(notes(bearers)).toContain(
      'Forward it goes until as much wood as a hole is wide is left ahead of the front holes: common practice, no source.',
    );
  });
  it('have an engine that points outboard turned about its station with its holes, its length as it was', () => {
    const [bearers] = bearersTemplate({ ...engine, sideThrust: 0.05 }, measured);
    const [a, b] = lines(bearers, 0, 'cut')[2]!.points;
    expect(Math.hypot(b![0] - a![0], b![1] - a![1])).toBeCloseTo(0.06, 12);
    expect((a![1] - b![1]) / (b![0] - a![0])).toBeCloseTo(Math.tan(0.05), 12);
    const [middle, one, other] = holes(bearers, 0);
    expect(middle).toEqual(near(-0.13, 0.004));
    expect(Math.hypot(other![0] - one![0], other![1] - one![1])).toBeCloseTo(0.029, 12);
    expect((other![0] - one![0]) / (other![1] - one![1])).toBeCloseTo(Math.tan(0.05), 12);
  });
  it('say what can not be: an engine out of its travel, a gap without wood, holes beside the wood', () => {
    const [out] = bearersTemplate({ ...engine, station: -0.08 }, measured);
    expect(words(out, 0)[0]).toEqual(['It stands {} too far aft', expect.closeTo(0.01, 12)]);
    const [ahead] = bearersTemplate({ ...engine, station: -0.18 }, measured);
    expect(words(ahead, 0)[1]).toEqual(['It stands {} too far forward', expect.closeTo(0.0075, 12)]);
    expect(notes(bearersTemplate(engine, { ...measured, gap: 0.034 })[0])).toContain(
      'A gap of {} leaves no wood under an engine that is {} over its lugs: type a gap below that.',
    );
    const aside =
      'Holes {} apart across do not lie on the bearers with their whole width: measure gap, lugs and holes again.';
    for (const across of [0.0265, 0.0315]) {
      const drilled = { ...measured, holes: { ...measured.holes, across } };
      expect(notes(bearersTemplate(engine, drilled)[0])).toContain(aside);
    }
    expect(notes(bearersTemplate(engine, measured)[0])).not.toContain(aside);
    expect(bearersTemplate({ ...engine, length: Number.NaN }, measured)).toEqual([]);
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
  const wing = {
    ...{ inboardSpan: 0.5, outboardSpan: 0.48, rootChord: 0.23, inboardTipChord: 0.2, outboardTipChord: 0.18 },
    ...{ inboardSweep: 0.1, outboardSweep: 0, thickness: 0.15, incidence: 0 },
  };
  const ends = { count: 2, station: Number.NaN };
  const titles = (template: Template | undefined) => template!.views.map(({ title }) => title);
  it('and panels are as long as those of the wing', () => {
    const [ribs, inboard, outboard] = wingTemplates(wing, 0, ends);
    expect(titles(ribs)).toEqual(['Rib at the root', 'Rib at the inboard tip', 'Rib at the outboard tip']);
    expect(lines(inboard, 0, 'cut')[0]!.points[1]).toEqual(near(0.5 * Math.tan(0.1), -0.5));
    expect(lines(outboard, 0, 'cut')[0]!.points[2]).toEqual(near(0.18, 0.48));
    expect(titles(wingTemplates({ ...wing, outboardTipChord: 0.2 }, 0, ends)[0])).toEqual([
      'Rib at the root',
      'Rib at the tips',
    ]);
    expect(wingTemplates({ ...wing, rootChord: Number.NaN }, 0, ends)).toEqual([]);
  });
  it('stand evenly, as many as are wanted, each with its station, chord and thickness', () => {
    const [ribs] = wingTemplates(wing, 0, { ...ends, count: 4 });
    expect(titles(ribs)).toEqual([
      'Rib at the root',
      ...['Rib 2 of 4, inboard', 'Rib 3 of 4, inboard', 'Rib at the inboard tip'],
      ...['Rib 2 of 4, outboard', 'Rib 3 of 4, outboard', 'Rib at the outboard tip'],
    ]);
    expect(words(ribs, 0)).toEqual([['At the centreline: chord {}, thickness {}', 0.23, 0.23 * 0.15]]);
    expect(words(ribs, 2)).toEqual([
      ['From the centreline {} inboard: chord {}, thickness {}', ...near(1 / 3, 0.21, 0.0315)],
    ]);
    expect(words(ribs, 4)).toEqual([
      ['From the centreline {} outboard: chord {}, thickness {}', ...near(0.16, 0.23 - 0.05 / 3, 0.0345 - 0.0075 / 3)],
    ]);
    const xs = lines(ribs, 2, 'cut')[0]!.points.map(([x]) => x);
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(0.21, 6);
  });
  it('that both panels have alike are one with both stations', () => {
    const [ribs] = wingTemplates({ ...wing, outboardTipChord: 0.2 }, 0, { ...ends, count: 3 });
    expect(titles(ribs)).toEqual(['Rib at the root', 'Rib 2 of 3', 'Rib at the tips']);
    expect(words(ribs, 1)).toEqual([
      ['From the centreline {} inboard and {} outboard: chord {}, thickness {}', ...near(0.25, 0.24, 0.215, 0.03225)],
    ]);
  });
  it('stand where one is typed, outboard positive, and not beyond the tip', () => {
    const [inboard] = wingTemplates(wing, 0, { count: 2, station: -0.1 });
    expect(words(inboard, 3)[0]!.slice(1, 3)).toEqual(near(0.1, 0.224));
    const [outboard] = wingTemplates(wing, 0, { count: 2, station: 0.1 });
    expect(words(outboard, 3)[0]!.slice(1, 3)).toEqual(near(0.1, 0.23 - 0.05 * (0.1 / 0.48)));
    const [beyond] = wingTemplates(wing, 0, { count: 2, station: 0.49 });
    expect(beyond!.views).toHaveLength(3);
    expect(beyond!.notes.find((note) => note.words.startsWith('No rib'))).toEqual({
      words: 'No rib stands {} from the centreline: the outboard panel ends at {}.',
      figures: [0.49, 0.48].map((value) => ({ value, as: 'length' })),
    });
  });
  it('of a panel given by its corners are as long as its outline there, and stand where that is wide enough', () => {
    // Straight to 300 mm out, then to a point at 400 mm: along the span first.
    const inboardEdge = [0.3, 0, 0.4, 0.05, 0.3, 0.2];
    const [ribs] = wingTemplates({ ...wing, inboardEdge }, 0, { count: 5, station: -0.35 });
    expect(titles(ribs).filter((title) => !title.includes('outboard'))).toEqual([
      'Rib at the root',
      ...['Rib 2 of 5, inboard', 'Rib 3 of 5, inboard', 'Rib 4 of 5, inboard'],
      'Rib at the station that is typed',
    ]);
    expect(words(ribs, 2)[0]!.slice(1, 3)).toEqual(near(0.2, 0.21));
    expect(words(ribs, 3)[0]!.slice(1, 3)).toEqual(near(0.3, 0.2));
    expect(words(ribs, ribs!.views.length - 1)[0]!.slice(1, 3)).toEqual(near(0.35, 0.1));
    expect(notes(ribs)).toEqual(
      expect.arrayContaining([
        'Chords run straight from root to tip; of a panel given by its corners they lie within its outline. Thickness over chord and section are the same all along.',
        'The inboard panel is given by its corners and narrows to less than {} at its tip: no rib stands where it does.',
      ]),
    );
  });
});
