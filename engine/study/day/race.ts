import type { LogCell } from '../../sheet/document';
import { editLive, type Live } from '../../sheet/live';
import { cellsOf } from '../../sheet/sheets';
import type { Library } from '../../sheet/specs';
import { figuresOf, typedValue, withNumber } from '../field/numbers';
import { withModels } from '../field/with-models';
import { carriesFuel } from '../place/index';
import type { RaceCard } from './told';

/** What the flights of a day say of laps and fuel, SI; NaN for what they don't. */
interface Flown {
  readonly lapTime: number;
  readonly drawn: number;
  readonly laps: number;
}

/** The mean lap and the fuel drawn on the flights of this day, of every log. */
function flownOn(day: string, { compiled, state }: Live): Flown {
  const value = (path: string): number => state.m[compiled.program.slotOf.get(path) ?? -1] ?? Number.NaN;
  let [time, timed, drawn, laps] = [0, 0, 0, 0];
  for (const log of cellsOf(compiled.document).filter((cell): cell is LogCell => cell.kind === 'log')) {
    for (const [k, row] of log.rows.entries()) {
      if (row.date !== day || row.flown_as !== '') continue;
      const of = (name: string): number => value(`${log.name}.row${k + 1}.${name}`);
      if (of('time') > 0 && of('laps') > 0) {
        time += of('time');
        timed += of('laps');
      }
      const used = of('fuel_in') - (Number.isNaN(of('fuel_left')) ? 0 : of('fuel_left'));
      if (used > 0 && of('all_laps') > 0) {
        drawn += used;
        laps += of('all_laps');
      }
    }
  }
  return { lapTime: timed > 0 ? time / timed : Number.NaN, drawn: laps > 0 ? drawn : Number.NaN, laps };
}

/** The race on that day, with what the log has of it; undefined for a model without fuel or a race that can’t be flown. */
export function raceFor(onDay: Live, day: string, library: Library): RaceCard | undefined {
  if (!carriesFuel(onDay.compiled.document)) return undefined;
  const live = withModels(onDay, ['race'], library);
  const before = figuresOf(live, library);
  const flown = flownOn(day, live);
  const measured =
    flown.drawn > 0 && before.path('engine.fuel_drawn') !== undefined && before.info('engine.fuel_drawn') !== undefined;
  const lapTime = Number.isNaN(flown.lapTime) ? before.value('flight.lap_time') : flown.lapTime;
  const numbers = [
    ...(Number.isNaN(flown.lapTime) ? [] : [['race.lap_time', flown.lapTime] as const]),
    ...(measured
      ? ([
          ['engine.fuel_drawn', flown.drawn],
          ['engine.fuel_laps', flown.laps],
          ['engine.fuel_lap_time', lapTime],
        ] as const)
      : []),
  ];
  const document = numbers.reduce(
    (now, [of, si]) => withNumber(live, now, before.path(of)!, si),
    live.compiled.document,
  );
  const raced = editLive(live, document, library).live;
  const figures = figuresOf(raced, library);
  const of = (name: string): number => figures.value(`race.${name}`);
  if (Number.isNaN(of('time'))) return undefined;
  const typed = (name: string): number => typedValue(raced, figures.path(`race.${name}`)!);
  const glide = typed('glide_laps');
  const stops = of('stops');
  return {
    laps: typed('laps'),
    time: of('time'),
    lapTime: of('race_lap'),
    timed: !Number.isNaN(flown.lapTime),
    measured,
    shutOffLap: Math.max(0, Math.floor(of('laps_per_tank') - (Number.isNaN(glide) ? 0 : glide))),
    stops,
    reserve: typed('reserve'),
    refuel: stops > 0 ? (of('fuel') - of('fuel_usable')) / stops : 0,
    restart: typed('restart_time'),
    pit: stops > 0 ? of('pit_time') / stops : 0,
    fuelPerLap: of('fuel_per_lap'),
    fastTime: of('fast_time'),
    rangeTime: of('range_time'),
    bestNeedle: of('best_needle'),
    bestStops: of('best_stops'),
    bestTime: of('best_time'),
  };
}
