import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { blocks } from '../../../engine/blocks/registry';
import { withText } from '../../../engine/sheet/baseline';
import type { Document } from '../../../engine/sheet/document';
import { openText, serialise } from '../../../engine/sheet/file';
import { faultsOfLive, type Live, openLive, setLive } from '../../../engine/sheet/live';
import { rename } from '../../../engine/sheet/rename';
import { applyChanges } from '../../../engine/sheet/transaction';
import { drawingOfLive } from '../../../engine/study/design/drawing';
import { templatesOf } from '../../../engine/study/design/templates';
import { library } from '../../../engine/study/index';

const opened = openText(readFileSync(new URL('../../designs/quern.tetherwright.json', import.meta.url), 'utf8'));
if (!opened.ok) throw new Error(opened.message);
const { document } = opened;
const byKind = new Map(blocks.map((block) => [block.kind, block]));
const plain = openLive(document, library);
const withTexts = (texts: Readonly<Record<string, string>>): Document =>
  Object.entries(texts).reduce((now, [path, text]) => withText(now, path, text)!, document);
const live = (texts: Readonly<Record<string, string>>): Live => openLive(withTexts(texts), library);
const value = ({ compiled, state }: Live, path: string): number => state.m[compiled.program.slotOf.get(path)!]!;
const said = (of: Live): string[] => faultsOfLive(of).map(({ path, message }) => `${path}: ${message}`);

const at = (path: string): number => value(plain, path) * 1000;
const lines = (corners: readonly (readonly number[])[]): string =>
  corners.map((corner) => corner.map((mm) => `${mm} mm`).join('; ')).join('\n');
const stations = ['nose', 'front', 'rear', 'tail'].map((name) => ({
  x: at(`body.${name}_x`),
  half: at(`body.${name}_depth`) / 2,
}));
const middle = at('body.middle_height');
const side = lines([
  ...stations.map(({ x, half }) => [x, middle + half]),
  ...stations.toReversed().map(({ x, half }) => [x, middle - half]),
]);
const edge = (panel: 'inboard' | 'outboard'): string => {
  const span = at(`wing.${panel}_span`);
  const x = span * Math.tan(value(plain, `wing.${panel}_sweep`));
  return lines([
    [x, span],
    [x + at(`wing.${panel}_tip_chord`), span],
  ]);
};

/** Results of the design that outlines may bear on. */
const RESULTS = [
  ...['side_area', 'side_centroid', 'side_second_moment', 'slender_couple', 'middle_height', 'tail_bottom', 'nose_x'],
  ...['tail_x', 'drag_area'],
].map((name) => `body.${name}`);
const WING = [
  'span',
  'inboard_span',
  'area',
  'mean_chord',
  'quarter_chord',
  'lift_slope',
  'lift_station',
  'drag_station',
];

describe('outlines in the place of what a ruler gives', () => {
  it('give the same numbers to 1e-12 for the outlines of the ruler, all the way to the flight', () => {
    const outlined = live({
      'body.side_outline': side,
      'wing.inboard_outline': edge('inboard'),
      'wing.outboard_outline': edge('outboard'),
    });
    expect(said(outlined)).toEqual(said(plain));
    for (const path of [...RESULTS, ...WING.map((name) => `wing.${name}`)]) {
      const [one, other] = [value(outlined, path), value(plain, path)];
      expect(Math.abs(one - other), path).toBeLessThan(1e-12 * Math.max(1, Math.abs(other)));
    }
    for (const path of ['flight.pull', 'flight.lap_time', 'flight.nose_out']) {
      expect(value(outlined, path) / value(plain, path)).toBeCloseTo(1, 8);
    }
  });
  it('move what follows: a deeper tail takes the centre of the side aft and turns the nose', () => {
    const deepTail = side.replaceAll(`${middle + stations[3]!.half} mm`, `${middle + 60} mm`);
    const deeper = live({ 'body.side_outline': deepTail });
    expect(value(deeper, 'body.side_centroid')).toBeGreaterThan(value(plain, 'body.side_centroid') + 0.01);
    expect(value(deeper, 'flight.nose_out')).not.toBeCloseTo(value(plain, 'flight.nose_out'), 4);
    const round = live({ 'wing.outboard_outline': '0 mm; 400 mm\n40 mm; 485 mm\n120 mm; 485 mm\n205 mm; 400 mm' });
    expect(value(round, 'wing.area')).toBeLessThan(value(plain, 'wing.area'));
    expect(value(round, 'wing.outboard_span')).toBeCloseTo(0.485, 12);
  });
  it('are read in the place of the fields that they replace: a formula reads what the outline gives', () => {
    const wide = live({
      'wing.inboard_outline': lines([
        [0, 700],
        [200, 700],
      ]),
      'wing.inboard_span': '515 mm',
    });
    expect(value(wide, 'wing.inboard_span')).toBeCloseTo(0.7, 12);
    expect(wide.compiled.names.find(({ path }) => path === 'wing.inboard_span')!.settable).toBe(false);
    expect(plain.compiled.names.find(({ path }) => path === 'wing.inboard_span')!.settable).toBe(true);
  });
  it('are drawn, and cut at full size', () => {
    const corners = '-100 mm; 0 mm\n0 mm; 50 mm\n500 mm; 20 mm\n500 mm; -10 mm';
    const drawn = live({ 'body.side_outline': corners, 'wing.inboard_outline': '0 mm; 300 mm\n50 mm; 400 mm' });
    const shapes = drawingOfLive(drawn, byKind);
    const body = shapes.find(({ view, part }) => view === 'side' && part === 'body')!;
    expect(body.points).toEqual([-0.1, 0, 0, 0.05, 0.5, 0.02, 0.5, -0.01].map((v) => expect.closeTo(v, 12)));
    const wing = shapes.find(({ view, part }) => view === 'plan' && part === 'wing')!;
    expect(wing.points.slice(-4)).toEqual([0.05, -0.4, 0, -0.3].map((v) => expect.closeTo(v, 12)));
    const panel = templatesOf(drawn, byKind).find(({ title }) => title === 'Wing outline, inboard panel')!;
    expect(panel.views[0]!.marks[0]).toMatchObject({
      points: [
        [0, 0],
        [0, expect.closeTo(-0.3, 12)],
        [expect.closeTo(0.05, 12), expect.closeTo(-0.4, 12)],
        [value(plain, 'wing.root_chord'), 0],
      ],
    });
    const ribs = templatesOf(drawn, byKind).find(({ title }) => title === 'Ribs')!;
    expect(ribs.views.map(({ title }) => title)).toEqual(['Rib at the root', 'Rib at the outboard tip']);
  });
  it('come back from a file as they were typed, edited as any text, and no renaming changes them', () => {
    const text = '−170 mm; 28\n0; 4,5 cm\n4 1/2 in; -1 in';
    const kept = withTexts({ 'body.side_outline': text });
    const again = openText(serialise(kept));
    expect(again).toMatchObject({ ok: true, document: kept });
    const renamed = rename(kept, 'body', 'fuselage_and_more');
    if (!renamed.ok) throw new Error(renamed.message);
    const after = applyChanges(kept, renamed.changes).document;
    expect(JSON.stringify(after)).toContain(JSON.stringify(text));
    const edited = setLive(plain, [['body.side_outline', side]], library);
    expect(edited.unknown).toEqual([]);
    expect(value(edited.live, 'body.side_area')).toBeCloseTo(value(plain, 'body.side_area'), 12);
  });
});

describe('an outline that can’t be', () => {
  it('says which corner can’t be read, and what reads it waits', () => {
    const faulty = live({ 'body.side_outline': '0 mm; 0 mm\n100 mm; 3 g\n0; 10' });
    expect(said(faulty)).toContainEqual(
      expect.stringMatching(/^body\.side_outline: Side outline of Fuselage and drag: corner 2, height: /),
    );
    expect(said(faulty)).toContain('flight: Level flight waits for Fuselage and drag.');
  });
  it('says where it crosses itself, at the outline', () => {
    expect(said(live({ 'body.side_outline': '0; 0\n100; 50\n100; 0\n0; 50' }))).toContain(
      'body.side_outline: Side outline of Fuselage and drag crosses itself: the side from 0\u00a0mm; 0\u00a0mm to 100\u00a0mm; 50\u00a0mm meets the one from 100\u00a0mm; 0\u00a0mm to 0\u00a0mm; 50\u00a0mm. Move a corner so that its line goes round once.',
    );
    expect(said(live({ 'wing.inboard_outline': '0; 300\n200; 500\n0; 500\n220; 300' }))).toContain(
      'wing.inboard_outline: Inboard outline of Wing crosses itself: the side from 0\u00a0mm; 300\u00a0mm to 200\u00a0mm; 500\u00a0mm meets the one from 0\u00a0mm; 500\u00a0mm to 220\u00a0mm; 300\u00a0mm. Move a corner so that its line goes round once.',
    );
  });
  it('says that it encloses nothing', () => {
    expect(said(live({ 'body.side_outline': '0; 0\n100; 0\n200; 0' }))).toContain(
      'body.side_outline: Side outline of Fuselage and drag has no area to measure: the outline encloses no area; it must go round a surface. Move its corners, or remove it.',
    );
  });
});
