import {
  atNeedle,
  bestNeedle,
  correctedLapTime,
  inStandardAir,
  lapTimeAt,
  newFlightRoom,
  newSetup,
  newSolution,
  pitTimeOf,
  type Race,
  raceOf,
  solveFlight,
  stintsOf,
} from '../../physics/index';
import { block, type Columns } from '../block';
import { setupInWind, windLinks } from '../flight/in-wind';
import { FLUID, PLAIN, SECONDS, typedOr } from '../measures';
import { raceCautions } from './cautions';
import { raceFields, racePieces } from './fields';
import { raceResults } from './results';
import { raceTheory } from './theory';

type Fields = Columns<typeof windLinks & typeof raceFields>;

const standard = newSolution();
const setup = newSetup();
const room = newFlightRoom();

/** The race at the fastest needle; fuel a lap is that of level flight, for the lap time typed. */
function readRace(m: Float64Array, f: Fields, i: number): Race {
  const at = (column: number): number => m[column + i]!;
  const lapTime = typedOr(at(f.lap_time), at(f.flight.lap_time));
  return {
    laps: Math.round(at(f.laps)),
    lapTime,
    fuelPerLap: at(f.flight.fuel_per_lap) * (lapTime / at(f.flight.lap_time)),
    usable: typedOr(at(f.usable), at(f.engine.tank_volume)),
    reserve: at(f.reserve),
    runLaps: at(f.run_laps),
    runTime: at(f.run_time),
    glideLaps: at(f.glide_laps),
    glideTime: at(f.glide_time),
    catchTime: at(f.catch_time),
    restartTime: at(f.restart_time),
    refuelRate: at(f.refuel_rate),
  };
}

const needleOf = (m: Float64Array, f: Fields, i: number) => ({
  slower: m[f.range_slower + i]!,
  saves: m[f.range_saves + i]!,
});

/** Lap time in standard air and calm; NaN where the model cannot fly there. */
function standardLap(m: Float64Array, f: Fields, i: number, stride: number): number {
  setupInWind(m, f, i, stride, setup);
  solveFlight(inStandardAir(setup, m[f.density_exponent + i]!), room, standard);
  if (standard.status !== 'settled') return Number.NaN;
  return lapTimeAt(standard.speed, standard.radius, standard.elevation);
}

/** A race with stops for fuel. */
export const race = block({
  kind: 'race',
  title: 'Race',
  doc: 'The time for a number of laps with stops for fuel: how many stops the tank makes necessary, what they cost, how near one stop less is, and whether a needle set for range wins over the fastest. Laps, stops and pit work come from the current rule book.',
  line: ['time', 'stops'],
  lineTitled: true,
  fields: { ...windLinks, ...racePieces, ...raceFields },
  results: raceResults,
  reasons: {
    no_fuel: 'The engine takes no fuel: a race with stops for fuel is for engines that burn it.',
    no_laps:
      'A filling of {fuel_usable} does not last a lap: a lap takes {fuel_per_lap}, and {reserve} laps are kept in reserve. A larger tank or less reserve would do.',
  },
  theory: raceTheory,
  cautions: raceCautions,
  run(m, f, r, i, stride) {
    const fastest = readRace(m, f, i);
    const needle = needleOf(m, f, i);
    if (!(fastest.fuelPerLap > 0)) return 'no_fuel';
    const flown = atNeedle(fastest, needle, m[f.needle + i]!);
    m[r.fuel_usable + i] = flown.usable;
    m[r.fuel_per_lap + i] = flown.fuelPerLap;
    const answer = raceOf(flown);
    if (answer.status === 'no laps') return 'no_laps';
    m[r.time + i] = answer.time;
    m[r.stops + i] = answer.stops;
    m[r.laps_per_tank + i] = answer.lapsPerTank;
    m[r.lacking + i] = answer.lacking;
    m[r.race_lap + i] = flown.lapTime;
    m[r.fuel + i] = answer.fuel;
    m[r.left + i] = answer.left;
    m[r.pit_time + i] = answer.pitTime;
    m[r.slow_time + i] = answer.slowTime;
    const best = bestNeedle(fastest, needle);
    m[r.best_needle + i] = best.needle;
    m[r.best_time + i] = best.answer.time;
    m[r.best_stops + i] = best.answer.stops;
    m[r.fast_time + i] = raceOf(fastest).time;
    m[r.range_time + i] = raceOf(atNeedle(fastest, needle, 0)).time;
    const calm = standardLap(m, f, i, stride);
    m[r.standard_lap_time + i] = calm;
    m[r.corrected_lap_time + i] = correctedLapTime(
      typedOr(m[f.timed_lap + i]!, fastest.lapTime),
      fastest.lapTime,
      calm,
    );
    return undefined;
  },
  traces: {
    stints: {
      title: 'Through the race',
      doc: 'Laps flown and fuel in the tank against the clock, at every release and touchdown.',
      columns: {
        clock: { ...SECONDS, symbol: 't', title: 'Clock', doc: 'From first release.' },
        laps: { ...PLAIN, symbol: 'n', title: 'Laps flown', doc: 'From first release.' },
        fuel: { ...FLUID, symbol: 'V', title: 'Usable fuel left', doc: 'In the tank.' },
      },
      run(m, f, r) {
        if (Number.isNaN(m[r.time]!)) return undefined;
        const flown = atNeedle(readRace(m, f, 0), needleOf(m, f, 0), m[f.needle]!);
        const [clock, laps, fuel]: [number[], number[], number[]] = [[], [], []];
        let [now, done] = [0, 0];
        for (const [k, stint] of stintsOf(flown).entries()) {
          if (k > 0) now += pitTimeOf(flown, stint);
          clock.push(now, now + stint.time);
          laps.push(done, done + stint.laps);
          fuel.push(stint.before, stint.after);
          now += stint.time;
          done += stint.laps;
        }
        return { clock, laps, fuel };
      },
    },
    needle: {
      title: 'By needle',
      doc: 'Race time, stops and laps a tank from the needle set for range to the fastest.',
      columns: {
        needle: { ...raceResults.best_needle, title: 'Needle', doc: 'From 0 %, set for range, to 100 %, the fastest.' },
        time: raceResults.time,
        stops: raceResults.stops,
        laps_per_tank: raceResults.laps_per_tank,
      },
      run(m, f, r) {
        if (Number.isNaN(m[r.time]!)) return undefined;
        const fastest = readRace(m, f, 0);
        const needle = Array.from({ length: NEEDLES }, (_, k) => k / (NEEDLES - 1));
        const answers = needle.map((setting) => raceOf(atNeedle(fastest, needleOf(m, f, 0), setting)));
        return {
          needle,
          time: answers.map(({ time }) => time),
          stops: answers.map(({ stops }) => stops),
          laps_per_tank: answers.map(({ lapsPerTank }) => lapsPerTank),
        };
      },
    },
  },
});

const NEEDLES = 101;
