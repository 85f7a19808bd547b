import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  closePushrod,
  handleTorque,
  linkageAt,
  newBellcrankState,
  newLinkageState,
  newPushrodState,
  newTravel,
  pushrodBetween,
  travelOf,
  turnBellcrank,
  turnFor,
  turnForElevator,
} from '../../../../engine/physics/index';
import { bellcrank, DEGREE, linkage, measured } from './rig';

const limits = { handleUp: 35 * DEGREE, handleDown: 35 * DEGREE, stopUp: 45 * DEGREE, stopDown: 45 * DEGREE };

describe('bellcrank', () => {
  it('has lever arms that are the derivatives of the lengths of its leadouts', () => {
    const [here, less, more] = [newBellcrankState(), newBellcrankState(), newBellcrankState()];
    for (const turn of [-1, -0.4, 0, 0.3, 0.9]) {
      const b = { ...bellcrank, rearArm: 0.03, offset: 0.006 };
      turnBellcrank(b, turn, here);
      turnBellcrank(b, turn - 1e-5, less);
      turnBellcrank(b, turn + 1e-5, more);
      expect(here.frontLever).toBeCloseTo((less.frontLength - more.frontLength) / 2e-5, 9);
      expect(here.rearLever).toBeCloseTo((more.rearLength - less.rearLength) / 2e-5, 9);
    }
  });
  it('has its whole arm as lever where the leadout comes in square', () => {
    const far = { ...bellcrank, frontGuideX: 0.022, rearGuideX: 0.098 };
    const state = newBellcrankState();
    turnBellcrank(far, 0, state);
    expect(state.frontLever).toBeCloseTo(0.038, 15);
    expect(state.rearLever).toBeCloseTo(0.038, 15);
  });
});

describe('pushrod', () => {
  it('closes: both holes stand its length apart at every turn', () => {
    const rod = measured();
    const state = newPushrodState();
    for (const turn of [-0.7, -0.2, 0, 0.5, 0.8]) {
      closePushrod(rod, turn, state);
      expect(pushrodBetween(rod, turn, state.elevator)).toBeCloseTo(rod.length, 14);
    }
  });
  it('turns the horn by the ratio of the arms at the first degree', () => {
    // A long pushrod, both arms square to it: dδ/dβ = −p/h.
    const rod = measured({ hingeX: 200, plane: -0.025, hingeZ: 0, hornY: -0.011 });
    const state = newPushrodState();
    closePushrod(rod, 0, state);
    expect(state.gain).toBeCloseTo(-0.019 / 0.025, 6);
  });
  it('is a parallelogram where arm and horn are alike, turn in one plane and the pushrod is as long as its base', () => {
    // The four-bar of the horn's own plane, by hand: hole of a crank at (p cos β, p sin β), hinge 0.4 m behind, horn as long as the crank.
    const state = newPushrodState();
    for (const beta of [-0.6, -0.1, 0.2, 0.9]) {
      // An arm of no length puts the hole where it is wanted: the crank's plane is that of the horn.
      const hole = { x: 0.025 * Math.cos(-Math.PI / 2 + beta), z: 0.025 * Math.sin(-Math.PI / 2 + beta) };
      closePushrod(
        {
          ...{ pivotX: hole.x, pivotY: 0, plane: hole.z, arm: 0, direction: 0, length: 0.4, branch: 1 },
          ...{ hingeX: 0.4, hingeZ: 0, hornY: 0, horn: 0.025, hornDirection: -Math.PI / 2 },
        },
        0,
        state,
      );
      // Behind the hinge's own line to the hole the other way of assembly crosses over; this one keeps both arms parallel.
      expect(state.elevator).toBeCloseTo(beta, 12);
    }
  });
  it('is the mirror image of itself with horn and arm on their other sides', () => {
    const below = measured({ plane: -0.03, hingeZ: 0 });
    const above = measured({ plane: 0.03, hingeZ: 0, hornDirection: Math.PI / 2 });
    const [a, b] = [newPushrodState(), newPushrodState()];
    for (const turn of [-0.6, 0.1, 0.5]) {
      closePushrod(below, turn, a);
      closePushrod(above, turn, b);
      expect(a.elevator).toBeCloseTo(-b.elevator, 13);
      expect(a.gain).toBeCloseTo(-b.gain, 13);
    }
    const inboard = measured({ direction: -Math.PI / 2, hornY: -0.049 });
    const outboard = measured();
    for (const turn of [-0.6, 0.1, 0.5]) {
      closePushrod(outboard, turn, a);
      closePushrod(inboard, -turn, b);
      expect(a.elevator).toBeCloseTo(b.elevator, 13);
    }
  });
  it('has no elevator where it does not reach', () => {
    const state = newPushrodState();
    closePushrod({ ...measured(), length: 0.3 }, 0, state);
    expect(state.elevator).toBeNaN();
    closePushrod({ ...measured(), length: 0.6 }, 0, state);
    expect(state.elevator).toBeNaN();
    closePushrod({ ...measured({ hornY: 0.5 }), length: 0.4 }, 0, state);
    expect(state.elevator).toBeNaN();
  });
});

describe('the whole linkage', () => {
  it('has the product of its ratios for small angles', () => {
    const wide = { ...bellcrank, frontGuideX: 0.022, rearGuideX: 0.098 };
    const rod = measured({ hingeX: 200, plane: -0.025, hingeZ: 0 });
    const l = linkage({ bellcrank: wide }, rod);
    const state = newLinkageState();
    linkageAt(l, 1e-6, state);
    expect(state.ratio).toBeCloseTo((0.09 / 0.076) * (0.019 / 0.025), 5);
    expect(state.elevator / state.handle).toBeCloseTo((0.09 / 0.076) * (0.019 / 0.025), 5);
    // The rear line it is: pulled in it turns an arm that points outboard aft, and a horn below the hinge with it.
    expect(l.sense).toBe(-1);
  });
  it('gives up elevator by the other line with the horn above', () => {
    expect(linkage({}, measured({ hornDirection: Math.PI / 2, plane: 0.035 })).sense).toBe(1);
  });
  it('has a ratio that is the derivative of its own travel', () => {
    const l = linkage({ upLineLonger: 0.002 });
    const [here, less, more] = [newLinkageState(), newLinkageState(), newLinkageState()];
    for (const turn of [-0.6, -0.1, 0.2, 0.55]) {
      linkageAt(l, turn, here);
      linkageAt(l, turn - 1e-5, less);
      linkageAt(l, turn + 1e-5, more);
      expect(here.ratio).toBeCloseTo((more.elevator - less.elevator) / (more.handle - less.handle), 7);
    }
  });
  it('comes back from handle and elevator to the turn', () => {
    const l = linkage({ upLineLonger: -0.003 });
    const state = newLinkageState();
    for (const turn of [-0.5, 0.1, 0.4]) {
      linkageAt(l, turn, state);
      expect(turnFor(l, state.handle, -1, 1)).toBeCloseTo(turn, 10);
      expect(turnForElevator(l, state.elevator, -0.7, 0.7)).toBeCloseTo(turn, 10);
    }
  });
  it('keeps what it is given: moment × way of the elevator is pull × way of the lines', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -0.6, max: 0.6, noNaN: true }),
        fc.double({ min: 0.01, max: 0.03, noNaN: true }),
        fc.double({ min: -0.02, max: 0.02, noNaN: true }),
        (turn, horn, offset) => {
          const rod = measured({ horn, hingeX: 0.45, hornDirection: -Math.PI / 2 + offset * 10 });
          const l = linkage({ bellcrank: { ...bellcrank, offset: offset / 4 } }, rod);
          const [here, less, more] = [newLinkageState(), newLinkageState(), newLinkageState()];
          const small = 1e-5;
          linkageAt(l, turn, here);
          linkageAt(l, turn - small, less);
          linkageAt(l, turn + small, more);
          fc.pre(Number.isFinite(less.elevator + more.elevator) && Math.abs(here.rod.hornLever) > 0.002);
          // A moment of 1 N·m at the elevator is a force in the pushrod, and that a pull in the up line alone, by lever arms.
          const force = 1 / Math.abs(here.rod.hornLever);
          const pull = (force * Math.abs(here.rod.crankLever)) / here.upLever;
          const inside = (s: typeof here): number => (l.sense > 0 ? s.crank.frontLength : s.crank.rearLength);
          const done = pull * (inside(less) - inside(more));
          const got = more.elevator - less.elevator;
          expect(done / got).toBeCloseTo(1, 6);
        },
      ),
      { seed: 11, numRuns: 200 },
    );
  });
});

describe('travel', () => {
  it('ends at the handle or at a stop, whichever comes first', () => {
    const t = newTravel();
    travelOf(linkage(), limits, t);
    expect(t.status).toBe('settled');
    expect([t.upLimit, t.downLimit]).toEqual([0, 0]);
    expect(t.up.handle).toBeCloseTo(35 * DEGREE, 10);
    expect(t.down.handle).toBeCloseTo(-35 * DEGREE, 10);
    expect(t.neutral.elevator).toBeCloseTo(0, 12);
    travelOf(linkage(), { ...limits, stopUp: 20 * DEGREE }, t);
    expect([t.upLimit, t.downLimit]).toEqual([1, 0]);
    expect(t.up.turn).toBeCloseTo(20 * DEGREE, 12);
    expect(t.up.handle).toBeLessThan(35 * DEGREE);
  });
  it('stands down with the handle upright where the up line is too long', () => {
    const t = newTravel();
    travelOf(linkage({ upLineLonger: 0.005 }), limits, t);
    expect(t.neutral.handle).toBeCloseTo(0, 10);
    expect(t.neutral.elevator).toBeLessThan(-2 * DEGREE);
  });
  it('says what locks, and where', () => {
    const t = newTravel();
    // A horn of 12 mm on an arm of 19 mm is pulled into line with its pushrod before the stop.
    travelOf(linkage({}, measured({ horn: 0.012 })), limits, t);
    expect(t.status).toBe('horn locked');
    expect(Math.abs(t.failsAt)).toBeGreaterThan(20 * DEGREE);
    expect(Math.abs(t.failsAt)).toBeLessThan(45 * DEGREE);
    // An arm that points forward by 60° comes into line with its pushrod after some 30°.
    travelOf(linkage({}, measured({ direction: 150 * DEGREE, horn: 0.04 })), limits, t);
    expect(t.status).toBe('crank locked');
    expect(Math.abs(t.failsAt)).toBeGreaterThan(25 * DEGREE);
    expect(Math.abs(t.failsAt)).toBeLessThan(35 * DEGREE);
    travelOf(linkage({}, { ...measured(), length: 0.3 }), limits, t);
    expect([t.status, t.failsAt]).toEqual(['open', 0]);
    travelOf(linkage({ bellcrank: { ...bellcrank, offset: 0.06 } }), { ...limits, stopUp: 75 * DEGREE }, t);
    expect(t.status).toBe('leadout locked');
    travelOf(linkage({ upLineLonger: 0.2 }), limits, t);
    expect(t.status).toBe('out of hand');
  });
});

describe('the handle', () => {
  it('is turned upright by pull on an overhang, and by the line that pulls more', () => {
    expect(handleTorque(0.09, 0.05, 0, 30, 0)).toBe(0);
    expect(handleTorque(0.09, 0.05, 0.5, 30, 0)).toBeCloseTo(30 * 0.05 * Math.sin(0.5), 12);
    expect(handleTorque(0.09, 0.05, 0, 30, 10)).toBeCloseTo(10 * 0.045, 12);
  });
});
