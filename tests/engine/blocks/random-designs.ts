import { air } from '../../../engine/blocks/air/index';
import { windFields } from '../../../engine/blocks/air/wind';
import type { AnyBlock, Field } from '../../../engine/blocks/block';
import { isLink, isOption } from '../../../engine/blocks/block';
import { body } from '../../../engine/blocks/body/index';
import { fuelFields } from '../../../engine/blocks/engines/fuel-use';
import { measuredLap } from '../../../engine/blocks/engines/measured-lap';
import { thrustLaw } from '../../../engine/blocks/engines/thrust-law';
import { flight } from '../../../engine/blocks/flight/index';
import { leadouts } from '../../../engine/blocks/leadouts/index';
import { lines } from '../../../engine/blocks/lines/index';
import { partsResults } from '../../../engine/blocks/parts/results';
import { tail } from '../../../engine/blocks/tail/index';
import { wing } from '../../../engine/blocks/wing/index';
import type { Rig } from './rig';

/**
 * Evenly spread numbers from a seed, 0 ≤ x < 1. Source: Numerical Recipes' linear congruential constants (from memory).
 */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
}

const IDLE = new Set([
  ...Object.keys(fuelFields),
  ...Object.keys(windFields),
  'test_load',
  'drag_factor',
  'power_factor',
  'rib_count',
  'rib_station',
]);

/** Fields with values spread over their declared ranges; `share` of them, the others stay as they come. */
function spread(block: AnyBlock, next: () => number, share: number): Record<string, number | string> {
  const typed: Record<string, number | string> = {};
  for (const [name, spec] of Object.entries(block.fields)) {
    // What an engine burns, the wind, the load of the pull test and the ribs of templates don't change how the model flies level in calm air; the factors scale what other fields draw.
    if (IDLE.has(name) || isLink(spec) || next() > share) continue;
    if (isOption(spec)) typed[name] = spec.option[Math.floor(next() * spec.option.length)]!;
    else {
      const [low, high] = (spec as Field).range;
      typed[name] = low + next() * (high - low);
    }
  }
  return typed;
}

/** Runs all blocks of a random design; the reason of the flight, or of a block before it as `block: reason`. */
export function flyRandom(rig: Rig, next: () => number, share: number): string | undefined {
  const between = (low: number, high: number): number => low + next() * (high - low);
  const engine = next() < 0.7 ? thrustLaw : measuredLap;
  const mass = Math.exp(between(Math.log(0.05), Math.log(6)));
  const size = 0.1 + 0.3 * Math.cbrt(mass);
  const parts = {
    mass,
    x: between(-0.1, 0.3) * size,
    y: between(-0.03, 0.1) * size,
    z: between(-0.08, 0.08) * size,
    inertia_yy: mass * (size * between(0.2, 0.8)) ** 2,
    inertia_zz: mass * (size * between(0.3, 1.1)) ** 2,
  };
  rig.give('parts', partsResults, parts);
  for (const block of [air, wing, tail, body, engine, leadouts, lines]) {
    const typed = spread(block, next, share);
    // The four places along the fuselage must not run backward.
    if (block === body) {
      const places = ['nose_x', 'front_x', 'rear_x', 'tail_x'];
      const values = places.map(
        (name) => (typed[name] as number | undefined) ?? (body.fields as Record<string, unknown>)[name],
      );
      const sorted = values.map((v) => (typeof v === 'number' ? v : (v as Field).default)).sort((a, b) => a - b);
      for (const [k, name] of places.entries()) typed[name] = sorted[k]!;
    }
    const reason = rig.run(block, typed);
    if (reason !== undefined) return `${block.kind}: ${reason}`;
  }
  return rig.run(flight, spread(flight, next, share));
}
