import { describe, expect, it } from 'vitest';
import { air } from '../../../engine/blocks/air/index';
import { balance } from '../../../engine/blocks/balance/index';
import { ballast } from '../../../engine/blocks/ballast/index';
import { type AnyBlock, type Field, isCurve, isLink, isOption, type Result } from '../../../engine/blocks/block';
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
