import { describe, expect, it } from 'vitest';
import { newFlightRoom, newSolution, solveFlight } from '../../../../engine/physics/flight/index';
import {
  bestRelease,
  flyGlide,
  newGlide,
  newLaunch,
  newWindRoom,
  rollOut,
  runFrom,
  stallSpeed,
  stoppedPropellerDragArea,
  withEngineOff,
} from '../../../../engine/physics/wind/index';
import { quern, straightCurves } from '../flight/quern';

const room = newFlightRoom();
const windRoom = newWindRoom();

const profile = { handleHeight: 1.2, height: 2.7, exponent: 0 };
const calm = { speed: 0, profile };
const still = newSolution();
solveFlight(quern, room, still);

describe('the engine off', () => {
  it('has the drag of the stopped propeller in place of thrust', () => {
    const off = withEngineOff(quern, 0.006);
    expect(off.curves[off.thrustAt + 5]).toBeCloseTo(-0.5 * quern.density * 25 ** 2 * 0.006, 12);
    expect(off.curves[off.torqueAt + 5]).toBe(0);
    expect(off.curves[off.shaftSpeedAt + 5]).toBe(0);
    expect(stoppedPropellerDragArea(0.2286)).toBeCloseTo(0.12 * 0.2286 ** 2, 12);
  });
  it('stalls where level lift takes the greatest coefficient', () => {
    const v = stallSpeed(quern);
    expect(0.5 * quern.density * v * v * quern.wingArea * quern.liftLimit).toBeCloseTo(quern.mass * quern.gravity, 9);
  });
  it('rolls out as mechanics says, with and without the drag of the air', () => {
    expect(rollOut(8, 0.85, 0, 0.5)).toBeCloseTo((0.85 * 64) / 1, 9);
    let [v, s] = [8, 0];
    for (const dt = 1e-4; v > 0; v -= (dt * (0.007 * v * v + 0.5)) / 0.85) s += v * dt;
    expect(rollOut(8, 0.85, 0.007, 0.5)).toBeCloseTo(s, 2);
  });
});

describe('the glide', () => {
  const off = withEngineOff(quern, 0.006);
  const landing = 1.3 * stallSpeed(quern);
  it('in calm air slows by its drag alone, as the energy lost says, and ends at the landing speed', () => {
    const glide = newGlide();
    flyGlide(off, still, calm, 0, still.speed, landing, windRoom, glide);
    expect(glide.status).toBe('settled');
    expect(glide.landingSpeed).toBeCloseTo(landing, 2);
    // Drag near V²: m/(2 k) ln(V₁²/V₂²) with k from level flight, whose induced drag and lines are nearly that.
    const k =
      (still.drag + (still.lineDrag * quern.guideRadius) / still.radius) / still.speed ** 2 +
      0.5 * quern.density * 0.006;
    const way = (quern.mass / (2 * k)) * Math.log((still.speed / landing) ** 2);
    expect(Math.abs((glide.turned * still.radius) / way - 1)).toBeLessThan(0.15);
    expect(glide.leastPull).toBeLessThan(still.pull);
    expect(glide.time).toBeGreaterThan((glide.turned * still.radius) / still.speed);
  });
  it('pulls least on the windy side, and says where the lines go slack', () => {
    const glide = newGlide();
    flyGlide(off, still, { speed: 4, profile }, Math.PI / 2, still.speed, landing, windRoom, glide);
    expect(glide.status).toBe('settled');
    const light = { ...off, mass: 0.4 };
    flyGlide(light, still, { speed: 6, profile }, Math.PI / 2, still.speed, 5, windRoom, glide);
    expect(glide.status).toBe('slack');
    expect(Math.cos(glide.azimuth.at(-1)!)).toBeLessThan(0);
  });
});

describe('the launch', () => {
  const how = { rolling: 0.05, flyingSpeed: 10, noseOut: 0 };
  it('in calm air takes the time and the way of its forces', () => {
    const run = newLaunch();
    // No drag at all and one thrust: V = P t/m.
    const plain = {
      ...quern,
      ...straightCurves(4, 0, 0, 0),
      dragArea: 0,
      tailDragArea: 0,
      profileDrag: 0,
      lineCount: 0,
      sideThrust: 0,
    };
    runFrom(plain, calm, { ...how, rolling: 0 }, 0, run);
    expect(run.time).toBeCloseTo((quern.mass * 10) / 4, 1);
    expect(Math.abs(run.length / ((quern.mass * 100) / 8) - 1)).toBeLessThan(0.01);
    expect(run.leastPull).toBeCloseTo(0, 12);
    expect(run.pull.at(-1)! / ((quern.mass * 100) / run.length / (1 / run.turned))).toBeCloseTo(1, 1);
  });
  it('is not lifted by a wind from behind or aside: only air along the chord lifts', () => {
    const wind = { speed: 10, profile };
    const [behind, aside, still] = [newLaunch(), newLaunch(), newLaunch()];
    // At 270° the model runs straight downwind.
    runFrom(quern, wind, how, (3 * Math.PI) / 2, behind);
    runFrom(quern, wind, how, 0, aside);
    runFrom(quern, calm, how, 0, still);
    expect(behind.length).toBeGreaterThan(still.length);
    expect(aside.length).toBeGreaterThan(1);
  });
  it('ends at its flying speed, not at the step behind it, so that a little more speed is a little more run', () => {
    const lengths = [10, 10.01, 10.02].map((flyingSpeed) => {
      const run = newLaunch();
      runFrom(quern, calm, { ...how, flyingSpeed }, 0, run);
      expect(run.speed.at(-1)! / flyingSpeed).toBeCloseTo(1, 12);
      return run.length;
    });
    const [first, second] = [lengths[1]! - lengths[0]!, lengths[2]! - lengths[1]!];
    expect(first).toBeGreaterThan(0);
    expect(second / first).toBeCloseTo(1, 1);
  });
  it('is longer on long grass, and has no end where the grass holds it', () => {
    const [pavement, grass, held] = [0.02, 0.3, 1].map((rolling) => {
      const run = newLaunch();
      runFrom(quern, calm, { ...how, rolling }, 0, run);
      return run;
    });
    expect(grass!.length).toBeGreaterThan(pavement!.length);
    expect(held!.status).toBe('does not lift off');
  });
  it('is best released downwind, where the wind holds the lines tight, and worst upwind', () => {
    const wind = { speed: 5, profile };
    const best = bestRelease(quern, wind, how, 24);
    expect(Math.cos(best.azimuth)).toBeGreaterThan(0.7);
    const upwind = newLaunch();
    runFrom(quern, wind, how, Math.PI, upwind);
    expect(upwind.leastPull).toBeLessThan(0);
    expect(best.leastPull).toBeGreaterThan(0);
  });
});
