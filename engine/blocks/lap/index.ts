import {
  extremeOf,
  flyWindLap,
  LAP_PLACES,
  linesMass,
  newFlightRoom,
  newSetup,
  newSolution,
  newWindLap,
  newWindRoom,
  pullAtHandle,
  STRONGEST_WIND,
  solveFlight,
  windAtFloor,
} from '../../physics/index';
import { bearingOf, profileOf, windGrowth } from '../air/wind';
import { block } from '../block';
import { setupInWind, windLinks } from '../flight/in-wind';
import { typedOr } from '../measures';
import { lapCautions } from './cautions';
import { lapFields } from './fields';
import { FLOOR_ENDS, GUST_ENDS, lapResults } from './results';
import { ringColumns } from './ring';
import { lapTheory } from './theory';

/** For the picture of the lap. */
const RING_PLACES = 72;
const TURN = 2 * Math.PI;
const still = newSolution();
const setup = newSetup();
const room = newFlightRoom();
const windRoom = newWindRoom();
const lapNow = newWindLap(LAP_PLACES);
const lapAtFloor = newWindLap(LAP_PLACES);
const lapInGust = newWindLap(LAP_PLACES);
const ring = newWindLap(RING_PLACES);

/** A lap in wind. */
export const lap = block({
  kind: 'lap',
  slow: true,
  title: 'Lap in wind',
  doc: 'Pull and speed around a level lap in a steady wind, and the wind at which the least pull comes down to what the pilot wants. Wind takes pull away upwind, a little before the model comes straight upwind, and adds it downwind.',
  line: ['least_pull_per_weight', 'wind_at_floor'],
  lineTitled: true,
  fields: { ...windLinks, ...lapFields },
  results: lapResults,
  reasons: {
    slack:
      'The lines go slack {reason_azimuth} past straight downwind, in a wind of {air.wind}. Less wind, a lower flight or more speed would keep them tight.',
    stalled:
      'The wing stalls {reason_azimuth} past straight downwind, in a wind of {air.wind}: the model is slow in a following wind there. Less wind or weight, or more thrust, would do.',
    overtaken:
      'The wind of {air.wind} overtakes the model {reason_azimuth} past straight downwind. There is not enough thrust for this wind.',
    no_balance:
      'No nose-out and bank angle balances the model {reason_azimuth} past straight downwind, in a wind of {air.wind}. Less wind, a lower flight or more speed would do.',
    not_periodic: 'No lap in a wind of {air.wind} comes back to its own speed: there is too little thrust to spare.',
  },
  theory: lapTheory,
  cautions: lapCautions,
  run(m, f, r, i, stride) {
    setupInWind(m, f, i, stride, setup);
    solveFlight(setup, room, still);
    const profile = profileOf(m, f.air, f.flight, i);
    const factor = windGrowth(m, f.air, f.flight, i);
    const speed = m[f.air.wind + i]! * factor;
    flyWindLap(setup, still, { speed, profile }, windRoom, lapNow);
    m[r.reason_azimuth + i] = lapNow.azimuthOfReason;
    switch (lapNow.status) {
      case 'settled':
        break;
      case 'no balance':
        return 'no_balance';
      case 'not periodic':
        return 'not_periodic';
      default:
        return lapNow.status;
    }
    const { guideRadius, handleReach, lineCount, lineLinearMass, gravity } = setup;
    const hanging = linesMass(lineCount, lineLinearMass, guideRadius - handleReach) * gravity;
    const atHandle = (pull: number, at: number): number =>
      pullAtHandle(
        pull,
        lineCount * lineLinearMass,
        at / still.radius,
        handleReach,
        guideRadius,
        hanging,
        still.elevation,
      );
    const nearest = (azimuth: number): number => Math.round((azimuth / TURN) * LAP_PLACES) % LAP_PLACES;

    const least = extremeOf(lapNow.pull, -1);
    const most = extremeOf(lapNow.pull, 1);
    const weight = setup.mass * gravity;
    const floor = typedOr(m[f.floor + i]!, weight);
    m[r.least_pull + i] = least.value;
    m[r.least_pull_per_weight + i] = least.value / weight;
    m[r.least_azimuth + i] = least.azimuth;
    m[r.greatest_pull + i] = most.value;
    m[r.greatest_azimuth + i] = most.azimuth;
    const greatest = atHandle(most.value, lapNow.speed[nearest(most.azimuth)]!);
    m[r.greatest_pull_at_handle + i] = greatest;
    m[r.least_bearing + i] = bearingOf(m, f.air, f.flight, i, least.azimuth);
    m[r.greatest_bearing + i] = bearingOf(m, f.air, f.flight, i, most.azimuth);
    m[r.floor + i] = floor;
    m[r.floor_margin + i] = least.value / floor;
    m[r.lap_time + i] = lapNow.lapTime;
    // Without wind the lap is that of level flight, to the last bits of a sum.
    const longer = lapNow.lapTime - m[f.flight.lap_time + i]!;
    m[r.lap_time_change + i] = speed === 0 ? 0 : longer;
    m[r.slowest + i] = extremeOf(lapNow.speed, -1).value;
    m[r.fastest + i] = extremeOf(lapNow.speed, 1).value;
    m[r.wind_there + i] = speed;
    m[r.status + i] = 0;
    m[r.iterations + i] = lapNow.laps;
    m[r.residual + i] = lapNow.residual;

    const loss = (still.pull - least.value) / speed;
    const guess = speed > 0 ? (still.pull - floor) / loss : 5;
    const limit = windAtFloor(setup, still, profile, floor, guess, windRoom, lapAtFloor, lapNow);
    m[r.wind_at_floor + i] = limit.wind / factor;
    const strongest = limit.status === 'not met' ? STRONGEST_WIND / factor : 0;
    m[r.tight_up_to + i] = limit.status === 'settled' ? limit.wind / factor : strongest;
    m[r.floor_status + i] = FLOOR_ENDS.indexOf(limit.status);
    m[r.floor_iterations + i] = limit.iterations;
    m[r.floor_residual + i] = limit.residual;

    flyWindLap(setup, still, { speed: speed * m[f.air.gust + i]!, profile }, windRoom, lapInGust, lapNow);
    const { status } = lapInGust;
    m[r.gust_end + i] = GUST_ENDS.indexOf(status);
    const gust = status === 'settled' ? extremeOf(lapInGust.pull, 1) : undefined;
    m[r.least_pull_in_gust + i] = gust ? extremeOf(lapInGust.pull, -1).value : status === 'slack' ? 0 : Number.NaN;
    const inGust = gust ? atHandle(gust.value, lapInGust.speed[nearest(gust.azimuth)]!) : Number.NaN;
    m[r.greatest_pull_in_gust + i] = inGust;
    m[r.greatest_pull_met + i] = gust ? Math.max(greatest, inGust) : greatest;
    return undefined;
  },
  traces: {
    ring: {
      title: 'Around the lap',
      doc: 'Pull, speed and trim against azimuth from straight downwind of the pilot, in the direction of flight.',
      columns: ringColumns,
      run(m, f) {
        setupInWind(m, f, 0, 1, setup);
        solveFlight(setup, room, still);
        flyWindLap(
          setup,
          still,
          { speed: m[f.air.wind]! * windGrowth(m, f.air, f.flight, 0), profile: profileOf(m, f.air, f.flight, 0) },
          windRoom,
          ring,
        );
        if (ring.status !== 'settled') return undefined;
        const { azimuth, pull, speed, noseOut, outboardLow } = ring;
        const bearing = azimuth.map((angle) => bearingOf(m, f.air, f.flight, 0, angle));
        return { azimuth, pull, speed, nose_out: noseOut, outboard_low: outboardLow, bearing };
      },
    },
  },
});
