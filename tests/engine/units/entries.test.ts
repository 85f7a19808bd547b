import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readEntry } from '../../../engine/formula/index';
import { describeDimension, unitNamed, units } from '../../../engine/units/index';

interface EntryCase {
  readonly unit: string;
  readonly text: string;
  readonly value?: number;
  readonly coherent?: string;
  readonly typed?: string;
  readonly refused?: string;
}

const folder = new URL('./cases/', import.meta.url);

function casesIn(file: string): EntryCase[] {
  const cases: EntryCase[] = [];
  let unit = '';
  for (const line of readFileSync(new URL(file, folder), 'utf8').split('\n')) {
    if (line.startsWith('> ')) unit = line.slice(2);
    else if (line !== '' && !line.startsWith('#')) cases.push(caseIn(unit, line));
  }
  return cases;
}

function caseIn(unit: string, line: string): EntryCase {
  const [, quoted, plain = quoted, sign, after] = /^(?:"([^"]*)"(?= [=!]>)|(.*?)) ([=!]>) (.*)$/.exec(line) ?? [];
  if (plain === undefined || after === undefined) throw new Error(`This is no case: ${line}`);
  const text = quoted ?? plain;
  if (sign === '!>') return { unit, text, refused: after };
  const [, value, coherent, typed] = /^(\S+) ([^,]*), (.+)$/.exec(after) ?? [];
  return { unit, text, value: Number(value), coherent, typed };
}

const files = readdirSync(folder);
const all = files.flatMap(casesIn);

describe.each(files)('entries of %s', (file) => {
  test.each(casesIn(file))('$text where $unit is shown', ({ unit, text, value, coherent, typed, refused }) => {
    const read = readEntry(text, unit);
    if (refused !== undefined) {
      expect(read.ok ? `${read.si} ${read.unit}` : read.fault.message).toBe(refused);
      return;
    }
    if (!read.ok) throw new Error(read.fault.message);
    expect(Math.abs(read.si / value! - 1), `${read.si}`).toBeLessThan(1e-5);
    expect(read.unit).toBe(typed);
    // The value above is given in the coherent unit of the dimension.
    expect(unitNamed(coherent!)).toMatchObject({ dimension: unitNamed(unit)!.dimension, factor: 1 });
  });
});

test('there are cases enough, of both kinds and in both sets of units', () => {
  expect(all.length).toBeGreaterThan(240);
  expect(all.filter(({ refused }) => refused !== undefined).length).toBeGreaterThan(50);
  const sets = all.map(({ unit }) => unitNamed(unit)!.system);
  for (const set of ['metric', 'inch_pound']) expect(sets.filter((each) => each === set).length).toBeGreaterThan(60);
});

test('a refused entry says nothing in units of the other set', () => {
  const metric = units.filter(({ system }) => system === 'metric').map(({ name }) => name);
  for (const { name, system, dimension } of units) {
    if (system !== 'inch_pound') continue;
    for (const text of ['3 furlong', '5 A', '', '2 × 3']) {
      const read = readEntry(text, name);
      if (read.ok) throw new Error(`${text} was read`);
      const words = read.fault.message.split(/[\s,.:;]+/);
      const behindNumbers = words.filter((_, i) => /^[0-9.]+$/.test(words[i - 1] ?? ''));
      for (const unit of behindNumbers) expect(metric, `${name}: ${read.fault.message}`).not.toContain(unit);
    }
    expect(describeDimension(dimension)).not.toMatch(/^an? [a-z ]+ \(/);
  }
});
