import { describe, expect, it } from 'vitest';
import type { Document } from '../../../engine/sheet/document';
import { serialise } from '../../../engine/sheet/file';
import { editLive, faultsOfLive, type Live, openLive, setLive } from '../../../engine/sheet/live';
import { sheetRemoval } from '../../../engine/sheet/remove-sheet';
import { applyChanges } from '../../../engine/sheet/transaction';
import { answer } from '../../../engine/study/command/answer';
import { readArguments } from '../../../engine/study/command/arguments';
import { library } from '../../../engine/study/index';
import { placeStudy, studies } from '../../../engine/study/place/index';
import { someOf } from '../../cases';
import { begun, forms } from './place/begun';

const bare = begun(forms[0]!);
const at = ({ compiled, state }: Live, path: string): number => state.m[compiled.program.slotOf.get(path)!]!;

function withStudy(name: string, live: Live) {
  const placed = placeStudy(studies().find((study) => study.name === name)!, live, library);
  if (!placed.ok) throw new Error(placed.message);
  return placed;
}
const studied = (name: string, design: Document): Live =>
  openLive(withStudy(name, openLive(design, library)).document, library);

const race = studied('race_study', bare);
const pull = studied('pull_test_study', bare);

describe('one tank on a design', () => {
  it('gives the same laps by its own piece and by the flight, which took the volume of the engine before', () => {
    const before = openLive(bare, library);
    const engine = at(before, 'engine.tank_volume') / at(before, 'flight.fuel_per_lap');
    expect(at(before, 'flight.laps_per_filling')).toBe(engine);
    expect(at(race, 'flight.laps_per_filling')).toBe(at(race, 'tank.laps'));
    expect(at(race, 'tank.laps')).not.toBeCloseTo(engine, 1);
    expect(at(race, 'race.fuel_usable')).toBe(at(race, 'tank.usable'));
  });
  it('holds the fuel that the weights count, of forms with an engine', () => {
    for (const form of someOf(forms.filter(({ drive }) => drive === 'engine'))) {
      const design = studied('tank_study', begun(form));
      expect(at(design, 'tank.volume') / at(design, 'tank_volume'), form.size).toBeCloseTo(1, 4);
      expect(at(design, 'tank.fuel_apart'), form.size).toBeLessThan(1e-4);
      const larger = setLive(design, [['tank.length', '150 mm']], library).live;
      expect(at(larger, 'tank.fuel_apart'), form.size).toBeCloseTo(Math.abs(0.15 / at(design, 'tank.length') - 1), 3);
    }
  });
  it('is as large and where the tank in the air of the flight is', () => {
    for (const name of ['length', 'width', 'height', 'x', 'y'])
      expect(at(race, `tank.${name}`), name).toBe(at(race, `body.tank_${name}`));
  });
  it('takes back what it gave when it goes', () => {
    const { document, sheet } = withStudy('race_study', openLive(bare, library));
    const { document: after } = applyChanges(document, sheetRemoval(document, sheet));
    const left = editLive(openLive(document, library), after, library).live;
    expect(at(left, 'flight.laps_per_filling')).toBe(at(openLive(bare, library), 'flight.laps_per_filling'));
  });
});

describe('the race', () => {
  it('takes lap, tank, run and glide from the pieces that are there', () => {
    expect(at(race, 'race.lap_time')).toBe(at(race, 'lap.lap_time'));
    expect(at(race, 'race.run_laps')).toBe(at(race, 'launch.laps'));
    expect(at(race, 'race.run_time')).toBe(at(race, 'launch.time'));
    expect(at(race, 'race.glide_laps')).toBe(at(race, 'glide.laps'));
    expect(at(race, 'race.glide_time')).toBe(at(race, 'glide.time'));
    expect(faultsOfLive(race)).toEqual([]);
  });
  it('takes what is typed before all, and says on the command line from where the rest comes', () => {
    const typed = setLive(openLive(race.compiled.document, library), [['race.glide_time', '7 s']], library).live;
    expect(at(typed, 'race.glide_time')).toBe(7);
    const asked = readArguments(['a.json', '--get', 'race.glide_time', 'race.usable', 'race.laps']);
    if (asked.ask !== 'run') throw new Error(`asked for ${asked.ask}`);
    const said = answer(asked.request, serialise(race.compiled.document), library).out;
    expect(said).toMatch(
      /^race\.glide_time = [\d.]+\u00a0s, taken from glide\.time\nrace\.usable = [\d.]+\u00a0mL, taken from tank\.usable\nrace\.laps = 100\n$/,
    );
  });
  it('is tried over the usable fuel that it takes, which stays taken', () => {
    const placed = withStudy('race_study', openLive(bare, library));
    const series = placed.document.sheets.at(-1)!.pieces.find((piece) => piece.kind === 'trial_series');
    expect(series).toMatchObject({ axes: [{ of: 'race.usable' }] });
    expect(placed.says.filter((sentence) => sentence.includes('fuel'))).toEqual([]);
  });
});

describe('the greatest pull met in flight', () => {
  it('is that of the lap in wind with its gusts, where the design has one', () => {
    const windy = setLive(openLive(pull.compiled.document, library), [['wind', '3 m/s']], library).live;
    const gust = at(windy, 'lap.greatest_pull_in_gust');
    expect(gust).toBeGreaterThan(at(windy, 'lap.greatest_pull_at_handle'));
    expect(at(windy, 'strength.greatest_pull')).toBe(gust);
    expect(at(windy, 'strength.test_over_pull')).toBe(at(windy, 'strength.test_load') / gust);
    const typed = setLive(windy, [['strength.greatest_pull', '99 N']], library).live;
    expect(at(typed, 'strength.greatest_pull')).toBe(99);
  });
  it('leaves what the parts hold when no lap in this wind has an answer', () => {
    const gale = setLive(openLive(pull.compiled.document, library), [['wind', '18 m/s']], library).live;
    expect(at(gale, 'lap.greatest_pull_met')).toBeNaN();
    expect(at(gale, 'strength.test_over_pull')).toBeNaN();
    expect(at(gale, 'strength.strength_over_test')).toBe(at(pull, 'strength.strength_over_test'));
  });
});
