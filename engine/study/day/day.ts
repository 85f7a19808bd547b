import type { Live } from '../../sheet/live';
import { faultsOfLive } from '../../sheet/live';
import type { Library } from '../../sheet/specs';
import { figuresOf } from '../field/numbers';
import { withModels } from '../field/with-models';
import { sentenceOf } from '../run/cause';
import { brokenIn } from './broken';
import { onDay, wholeDay } from './conditions';
import { gearFor } from './gear';
import { raceFor } from './race';
import { setUpsFor } from './set-ups';
import type { DayAnswer, DayForm } from './told';

/** What the card reads; what of it a design lacks is added beside it as a study would, and the design stays as it is. */
const ROLES = ['air', 'flight', 'lap', 'launch', 'glide', 'leadouts', 'lines', 'body', 'engine', 'gear'];

/** The card of a day for the design as it stands. Yields between pieces of its work. */
export function* daySteps(open: Live, form: DayForm, library: Library): Generator<void, DayAnswer, void> {
  const whole = withModels(open, ROLES, library);
  const day = wholeDay(form, whole, figuresOf(whole, library));
  yield;
  const live = onDay(whole, day, library);
  const figures = figuresOf(live, library);
  const of = figures.value;
  if (Number.isNaN(of('flight.pull'))) {
    const cell = figures.info('flight.pull')?.cell;
    const faults = faultsOfLive(live);
    const fault = faults.find((each) => each.cell === cell && each.state === 'fault') ?? faults[0];
    return { ok: false, message: fault ? sentenceOf(fault) : 'The design does not fly yet.' };
  }
  yield;
  const setUps = yield* setUpsFor(live, figures, day);
  const gear = yield* gearFor(live, figures, day.ground);
  const race = raceFor(live, day.day, library);
  const lapFault = Number.isNaN(of('lap.least_pull')) ? faultOf(live, figures.info('lap.least_pull')?.cell) : undefined;
  return {
    ok: true,
    form: day,
    weight: of('parts.mass') * of('flight.gravity'),
    least: of('lap.least_pull'),
    leastInGust: of('lap.least_pull_in_gust'),
    leastBearing: of('lap.least_bearing'),
    greatest: of('lap.greatest_pull_met'),
    floor: of('lap.floor'),
    testLoad: of('flight.test_load'),
    lapTime: of('lap.lap_time'),
    tightUpTo: of('lap.tight_up_to'),
    clockwise: of('flight.direction') !== 0,
    release: of('launch.best_release'),
    leastInRun: of('launch.best_least_pull'),
    shutOff: of('glide.shut_off_bearing'),
    shutOffBefore: of('glide.shut_off_before'),
    ...setUps,
    gear,
    laps: {
      likely: of('flight.laps_per_filling'),
      fewest: of('flight.laps_per_filling_low'),
      most: of('flight.laps_per_filling_high'),
    },
    broken: [...(lapFault === undefined ? [] : [lapFault]), ...brokenIn(live)],
    ...(race ? { race } : {}),
  };
}

function faultOf(live: Live, cell: string | undefined): string | undefined {
  const fault = faultsOfLive(live).find((each) => each.cell === cell && each.state === 'fault');
  return fault && sentenceOf(fault);
}
