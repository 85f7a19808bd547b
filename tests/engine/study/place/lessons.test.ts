import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { guessOptionPath } from '../../../../engine/sheet/cells/index';
import type { Document, GuessCell } from '../../../../engine/sheet/document';
import { openText } from '../../../../engine/sheet/file';
import { type Live, setLive } from '../../../../engine/sheet/live';
import { cellsOf, sheetWith } from '../../../../engine/sheet/sheets';
import { library } from '../../../../engine/study/index';
import { lessons, studies } from '../../../../engine/study/place/index';
import type { SweepProgress } from '../../../../engine/terms/index';
import { someOf } from '../../../cases';
import { halfUnit, jsonOf } from '../../../published/aero-rows';
import { wholeOf } from '../whole';
import { begun, forms } from './begun';
import { allOn, holdTheLaws } from './laws';

const quern = (): Document => {
  const opened = openText(readFileSync(new URL('../../../designs/quern.tetherwright.json', import.meta.url), 'utf8'));
  if (!opened.ok) throw new Error(opened.message);
  return opened.document;
};
const designs: readonly (readonly [string, () => Document])[] = [
  ['the Quern 25', quern],
  ...someOf(forms).map(
    (form, k) => [`design ${k + 1}: ${form.drive} ${form.size}, ${form.span}`, () => begun(form)] as const,
  ),
];

const taught = designs.map(([name, design]) => [name, allOn(design(), lessons())] as const);

for (const [name, all] of taught) holdTheLaws(name, all);

describe('a lesson', () => {
  it('is in the list where it has a file, and the other way round', () => {
    const files = readdirSync(new URL('../../../../data/lessons/', import.meta.url));
    expect(files.toSorted()).toEqual(
      lessons()
        .map(({ name }) => `${name}.json`)
        .toSorted(),
    );
    expect(lessons().length).toBe(10);
    const names = [...lessons(), ...studies()].map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
  });
  it('begins with its question, which it asks once, and says why, what to try, and a word to the instructor', () => {
    for (const { before, answer } of taught[1]![1].steps) {
      const { document, sheet } = answer;
      const { pieces, title: name } = sheetWith(document, sheet)!;
      expect(before.sheets.length).toBe(document.sheets.length - 1);
      const guesses = pieces.filter((piece) => piece.kind === 'guess');
      expect([name, pieces[0]?.kind, guesses.length]).toEqual([name, 'guess', 1]);
      for (const key of ['question', 'why', 'try_this', 'instructor'] as const)
        expect(guesses[0]![key].length, `${key} of ${name}`).toBeGreaterThan(60);
      expect(guesses[0]!.instructor, name).toMatch(/Ten minutes\.$/);
    }
  });
  it('does not say its answer before it is guessed', () => {
    for (const { document, sheet } of taught[1]![1].steps.map(({ answer }) => answer)) {
      const { pieces, title } = sheetWith(document, sheet)!;
      const guess = pieces[0] as GuessCell;
      expect(guess.question, title).not.toContain(`{${guess.of}}`);
      expect(document.figures.filter((path) => path === guess.of && guess.way === 'number')).toEqual([]);
    }
  });
});

/** A lesson on a design that has all of them: its answer, and what the answer is worked out from by hand. */
function asked(name: string, live: Live) {
  const { document } = live.compiled;
  const { question } = lessons().find((lesson) => lesson.name === name)!;
  const guess = document.sheets.find(({ title }) => title === question)!.pieces[0] as GuessCell;
  const at = (path: string): number => live.state.m[live.compiled.program.slotOf.get(path)!]!;
  /** Of the piece that stands in for a kind of model. */
  const of = (kind: string, result: string): number =>
    at(`${cellsOf(document).find((cell) => cell.kind === 'model' && cell.of === kind)!.name}.${result}`);
  return { live, guess, at, of, answer: at(guess.name) };
}
/** Words of the answer that is right. */
function right({ guess, at, answer }: ReturnType<typeof asked>): string | undefined {
  return guess.options.find((_, k) => {
    const path = guessOptionPath(guess, k);
    return !(answer < at(`${path}.low`) || answer > at(`${path}.high`));
  })?.words;
}
/** What the trial series of a lesson gives: values across and the result, where there is an answer. */
function along({ live, guess }: { live: Live; guess: GuessCell }) {
  const { axes, columns, wanted, why } = wholeOf(live, guess.series) as SweepProgress;
  const answered = [...why].flatMap((code, k) => (code === 0 ? [k] : []));
  expect(answered.length).toBeGreaterThan(0.8 * why.length);
  const [axis, column] = [axes[0]!, columns[wanted.indexOf(guess.of)]!];
  return { of: axis.path, xs: answered.map((k) => axis.values[k]!), ys: answered.map((k) => column[k]!) };
}
const published = (file: string, id: string) =>
  jsonOf(file).examples.find((each: { id: string }) => each.id === id) as {
    givens: Record<string, number>;
    answer: Record<string, number | number[]>;
  };

describe.each(taught)('what %s answers is what a book or a sum by hand says', (_, { live: made }) => {
  const fuel = cellsOf(made.compiled.document).some(
    (cell) => cell.kind === 'parts' && cell.rows.some((row) => row.fuel),
  );

  test('nose against tail: the lever, m_n a_n = m_t a_t', () => {
    const { answer, at, of } = asked('balance_lesson', made);
    const [mass, x] = [at('parts.mass'), at('parts.x')];
    const [tail, nose] = [of('tail', 'hinge_x'), of('body', 'nose_x')];
    // A gram at the tail and so many in the nose leave the CG where it was.
    const moved = (mass * x + 0.001 * tail + 0.001 * answer * nose) / (mass + 0.001 + 0.001 * answer);
    expect(moved).toBeCloseTo(x, 9);
    expect(answer).toBeGreaterThan(1);
  });
  test('twice the speed: m v²/r of Cutnell and Johnson, Physics, ch. 5', () => {
    const lesson = asked('speed_lesson', made);
    const { answer } = published('circular_flight_examples.json', 'cutnell_5_5');
    const [slow, fast] = answer.tension_N as [number, number];
    expect(lesson.answer).toBeCloseTo(fast / slow, 9);
    expect(right(lesson)).toBe('Four times as hard');
  });
  test('the guide: in the plane of the circle the pull goes through the CG, so the nose turns by atan(x/y)', () => {
    const lesson = asked('guide_lesson', made);
    const { xs, ys } = along(lesson);
    const arm = -lesson.of('leadouts', 'guide_y') + lesson.of('balance', 'cg_y');
    const byHand = Math.atan2(xs.at(-1)! - xs[0]!, arm);
    // Fin and fuselage turn it too, against the lines: they take up to a third of it.
    expect((ys.at(-1)! - ys[0]!) / byHand).toBeGreaterThan(0.6);
    expect((ys.at(-1)! - ys[0]!) / byHand).toBeLessThan(1.1);
  });
  test('tip weight: half of the lines hangs at one arm, the lead at the other', () => {
    const { answer, of } = asked('tip_lesson', made);
    const lead = answer * (of('wing', 'outboard_span') - 0.01);
    expect(lead).toBeCloseTo((of('lines', 'weight') / 9.80665 / 2) * Math.abs(of('leadouts', 'guide_y')), 9);
  });
  test('longer lines: less pull, as m v²/r has it', () => {
    const lesson = asked('lines_lesson', made);
    const { of, xs, ys } = along(lesson);
    expect(ys.at(-1)!).toBeLessThan(ys[0]!);
    // The pull of the full solution lies about that of a point mass, which has no wing and whose lines weigh nothing.
    for (const x of [xs[0]!, xs.at(-1)!]) {
      const { live } = setLive(lesson.live, [[of, `${x} m`]], library);
      const at = (path: string): number => live.state.m[live.compiled.program.slotOf.get(path)!]!;
      const textbook = (at('parts.mass') * at('flight.speed') ** 2) / at('flight.radius');
      expect(at('flight.pull') / textbook).toBeGreaterThan(0.85);
      expect(at('flight.pull') / textbook).toBeLessThan(1.1);
    }
  });
  test('wind: the part of it that blows the model out of the circle, W cos θ, is least straight upwind', () => {
    const lesson = asked('wind_lesson', made);
    const places = Array.from({ length: 360 }, (_, degrees) => Math.cos((degrees * Math.PI) / 180));
    expect(places.indexOf(Math.min(...places))).toBe(180);
    expect(right(lesson)).toBe('In front of me, where the wind comes from');
    expect(Math.abs(lesson.of('lap', 'least_azimuth') - Math.PI)).toBeLessThan(Math.PI / 3);
  });
  test.skipIf(!fuel)('fuel: tan θ = a/g of a free surface, White, Fluid Mechanics, ch. 2', () => {
    const { givens, answer } = published('fluids_free_surface.json', 'white_2_cup_linear');
    const tilt = (a: number, g: number): number => (Math.atan(a / g) * 180) / Math.PI;
    expect(Math.abs(tilt(givens.ax_m_s2!, 9.81) - (answer.theta_deg as number))).toBeLessThan(
      halfUnit(answer.theta_deg as number),
    );
    const lesson = asked('fuel_lesson', made);
    const a = lesson.of('flight', 'speed') ** 2 / lesson.of('flight', 'radius');
    expect((lesson.answer * 180) / Math.PI).toBeCloseTo(tilt(a, 9.80665), 9);
    // The tank measures from the wing, which hangs a little out of level.
    expect(Math.abs(lesson.of('tank', 'surface_angle') - lesson.answer)).toBeLessThan((9 * Math.PI) / 180);
  });
  test('over the nose: it falls when the CG stands above the place where the wheels touch', () => {
    const { answer, of } = asked('nose_lesson', made);
    const x = of('balance', 'cg_x') - of('body', 'wheel_x');
    const z = of('balance', 'cg_z') - (of('body', 'wheel_z') - of('body', 'wheel_diameter') / 2);
    // Turned by the answer about the contact, nose down, the CG stands over it.
    expect(x * Math.cos(answer) - z * Math.sin(answer)).toBeCloseTo(0, 12);
    expect(answer).toBeCloseTo(of('gear', 'wheel_angle'), 9);
  });
  test('pull test: so many times the mass', () => {
    const { answer, at, of } = asked('test_lesson', made);
    expect(answer).toBeCloseTo(of('flight', 'test_load') / 9.80665, 9);
    expect(answer / at('parts.mass')).toBeGreaterThan(5);
  });
  test('twitchy: half the horn, about twice the turn: b_h/b_p × p/h for small turns', () => {
    const lesson = asked('control_lesson', made);
    const { xs, ys } = along(lesson);
    const crank = lesson.of('leadouts', 'bellcrank');
    const byHand = (h: number): number =>
      (lesson.of('lines', 'handle_spacing') / crank) * (lesson.of('control', 'pushrod_arm') / h);
    for (const [k, x] of xs.entries()) expect(Math.abs(ys[k]! / byHand(x) - 1), `horn of ${x} m`).toBeLessThan(0.06);
  });
});
