import { describe, expect, it } from 'vitest';
import { air } from '../../../engine/blocks/air/index';
import { balance } from '../../../engine/blocks/balance/index';
import { ballast } from '../../../engine/blocks/ballast/index';
import {
  type AnyBlock,
  type Field,
  isCurve,
  isLink,
  isOption,
  isOptional,
  type Result,
} from '../../../engine/blocks/block';
import { body } from '../../../engine/blocks/body/index';
import { partsResults } from '../../../engine/blocks/parts/results';
import { blocks as registered } from '../../../engine/blocks/registry';
import { tail } from '../../../engine/blocks/tail/index';
import { wing } from '../../../engine/blocks/wing/index';
import { sameDimension, unitNamed } from '../../../engine/units/index';

const blocks: readonly AnyBlock[] = [air, wing, tail, body, balance, ballast];

function expectShown(name: string, spec: Field | Result): void {
  expect(spec.title, name).toMatch(/^\p{Lu}/u);
  expect(spec.doc, name).toMatch(/\.$/);
  for (const unit of [spec.unit, spec.tradeUnit ?? spec.unit]) {
    const known = unitNamed(unit);
    expect(known, `${name}: ${unit}`).toBeDefined();
    expect(sameDimension(known!.dimension, spec.dimension), `${name}: ${unit}`).toBe(true);
  }
}

it('says in one line what it is by fields and results that it has', () => {
  for (const { kind, line, fields, results } of registered) {
    expect(line?.length, kind).toBeGreaterThan(0);
    const unknown = (line ?? []).filter((name) => !(name in fields || name in results));
    expect(unknown, kind).toEqual([]);
  }
});

it('has a least wherever its words say what comes below it, and says it as part of a sentence', () => {
  const stops: string[] = [];
  for (const { kind, results } of registered) {
    for (const [name, spec] of Object.entries(results)) {
      if (isCurve(spec)) continue;
      const said = /\b[Bb]elow ([01](?:\.5)?)\b/.exec(spec.doc)?.[1];
      if (said !== undefined) expect(spec.least?.at, `${kind}.${name}`).toBe(Number(said));
      if (!spec.least) continue;
      expect(spec.least.because, `${kind}.${name}`).toMatch(/^[a-z].*[^.]$/);
      if (spec.least.stops) stops.push(`${kind}.${name}`);
    }
  }
  expect(stops).toEqual([
    'flight.test_margin',
    'flight.breaking_margin',
    'strength.strength_over_test',
    'strength.test_over_pull',
    'control.pull_margin',
    'control.margin',
    'control.margin_landing',
    'shutoff.used_margin',
    'shutoff.force_margin',
  ]);
});

it('takes through optional links only numbers of the same dimension that every piece of that role has', () => {
  const takes: string[] = [];
  for (const { kind, fields, results, after } of registered) {
    const late = new Set(after?.results);
    for (const [name, spec] of Object.entries(fields)) {
      if (isLink(spec) || isOption(spec) || spec.taken === undefined) continue;
      const [link = '', of = ''] = spec.taken.split('.');
      const optional = fields[link];
      expect(optional && isOptional(optional), `${kind}.${name}`).toBe(true);
      const givers = registered.filter((block) => (block.role ?? block.kind) === (optional as { link: string }).link);
      expect(givers, `${kind}.${name}`).not.toEqual([]);
      for (const giver of givers) {
        const given = (giver.results[of] ?? giver.fields[of]) as Field | undefined;
        expect(given && sameDimension(given.dimension, spec.dimension), `${kind}.${name} = ${spec.taken}`).toBe(true);
      }
      takes.push(`${kind}.${name} = ${spec.taken}`);
    }
    for (const name of late) expect(name in results, `${kind}.${name}`).toBe(true);
    for (const name of after?.fields ?? []) expect(name in fields, `${kind}.${name}`).toBe(true);
    const used = new Set(Object.values(fields).flatMap((spec) => ('taken' in spec ? spec.taken?.split('.')[0] : [])));
    const idle = Object.entries(fields).filter(([name, spec]) => isOptional(spec) && !used.has(name));
    expect(idle, `${kind} takes nothing by it`).toEqual([]);
  }
  expect(takes).toEqual([
    'found_cg.station = body.tail_x',
    'flight.filling = tank.usable',
    'tank.length = body.tank_length',
    'tank.width = body.tank_width',
    'tank.height = body.tank_height',
    'tank.x = body.tank_x',
    'tank.y = body.tank_y',
    'tank.rest_pitch = gear.rest_pitch',
    'room.tank_x = tank.x',
    'room.tank_z = tank.z',
    'room.tank_length = tank.length',
    'room.tank_height = tank.height',
    'strength.greatest_pull = lap.greatest_pull_met',
    'control.least_pull = lap.least_pull',
    'race.lap_time = lap.lap_time',
    'race.usable = tank.usable',
    'race.run_laps = launch.laps',
    'race.run_time = launch.time',
    'race.glide_laps = glide.laps',
    'race.glide_time = glide.time',
  ]);
});

describe.each(blocks.map((block) => [block.kind, block] as const))('the declaration of %s', (_, block) => {
  it('shows every number in a unit of its dimension, with title and doc', () => {
    for (const [name, spec] of [...Object.entries(block.fields), ...Object.entries(block.results)]) {
      if (isLink(spec) || isOption(spec) || isCurve(spec)) continue;
      expectShown(name, spec);
    }
  });
  it('has every default in its range, and says the basis of what it estimates', () => {
    for (const [name, spec] of Object.entries(block.fields)) {
      if (isLink(spec)) continue;
      if (isOption(spec)) {
        expect(spec.option, name).toContain(spec.default);
      } else if (Number.isNaN(spec.default)) {
        expect(spec.basis, name).toMatch(/\.$/);
      } else {
        expect(spec.default, name).toBeGreaterThanOrEqual(spec.range[0]);
        expect(spec.default, name).toBeLessThanOrEqual(spec.range[1]);
      }
    }
  });
  it('speaks in its reasons only of numbers it has', () => {
    for (const sentence of Object.values(block.reasons)) {
      for (const [, hole] of sentence.matchAll(/\{(\w+)\}/g)) {
        expect(hole! in block.fields || hole! in block.results, hole).toBe(true);
      }
    }
  });
  it('has sentences, not shouts or orders to fly', () => {
    expect(JSON.stringify(block)).not.toMatch(/!|\bGo\b/);
  });
});

it('the results of the list of parts are shown in units of their dimension', () => {
  for (const [name, spec] of Object.entries(partsResults)) expectShown(name, spec);
});
