import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { BlockCell, Document } from '../../../engine/sheet/document';
import { openText } from '../../../engine/sheet/file';
import { faultsOfLive, type Live, openLive } from '../../../engine/sheet/live';
import { cellsOf } from '../../../engine/sheet/sheets';
import { describeBlock } from '../../../engine/study/describe/blocks';
import { describeTable } from '../../../engine/study/describe/tables';
import { library } from '../../../engine/study/index';
import { shownUnit, unitNamed, units } from '../../../engine/units/index';

const file = new URL('../../designs/quern.tetherwright.json', import.meta.url);
const opened = openText(readFileSync(file, 'utf8'));
if (!opened.ok) throw new Error(opened.message);
const demo = opened.document;

/** One piece of every kind, and the demo with its parts, choices and tables. */
const pieces: BlockCell[] = library.blocks.map(({ kind }) => ({
  ...{ kind: 'model', id: `all_${kind}`, name: `all_${kind}`, title: kind, of: kind, fields: {} },
}));
const everything = (set: string): Document =>
  ({ ...demo, units: set, sheets: [...demo.sheets, { ...demo.sheets[0]!, id: 'all', pieces }] }) as Document;
const opens = new Map<string, Live>();
const open = (set: string): Live => {
  const live = opens.get(set) ?? openLive(everything(set), library);
  opens.set(set, live);
  return live;
};
const metric = units.filter(({ system }) => system === 'metric').map(({ name }) => name);
const inches = units.filter(({ system }) => system === 'inch_pound').map(({ name }) => name);

const saidWith = (words: readonly string[], units: readonly string[]): string[] =>
  words.filter((text) =>
    [...text.matchAll(/[0-9] (\S+?)[.,;:)"”]*(?=\s|$)/g)].some(([, unit]) => units.includes(unit!)),
  );

test('in an inch-pound design nothing has a metric unit', () => {
  const names = open('inch_pound').compiled.names;
  expect(names.length).toBeGreaterThan(700);
  expect(names.filter(({ unit }) => metric.includes(unit)).map(({ path, unit }) => `${path} ${unit}`)).toEqual([]);
});

test('in a metric design nothing has an inch-pound unit', () => {
  const names = open('metric').compiled.names;
  expect(names.filter(({ unit }) => inches.includes(unit)).map(({ path, unit }) => `${path} ${unit}`)).toEqual([]);
});

test('what is said of a name, and what is at fault, tells its numbers in the units of the design', () => {
  const live = open('inch_pound');
  expect(
    saidWith(
      live.compiled.names.map(({ doc }) => doc),
      metric,
    ),
  ).toEqual([]);
  // A title says what somebody typed.
  const titles = cellsOf(live.compiled.document).map(({ title }) => title);
  const faults = faultsOfLive(live).map(({ message }) =>
    titles.reduce((text, title) => text.replaceAll(title, ''), message),
  );
  expect(faults.length).toBeGreaterThan(20);
  expect(saidWith(faults, metric)).toEqual([]);
});

test('a bare number stays in the unit of its field, whatever is shown', () => {
  const value = (set: string): number => {
    const live = open(set);
    return live.state.m[live.compiled.program.slotOf.get('parts.fuel_tank.mass')!]!;
  };
  expect(value('inch_pound')).toBe(value('metric'));
  const info = open('inch_pound').compiled.names.find(({ path }) => path === 'air.temperature')!;
  expect(info).toMatchObject({ unit: '°F', bare: '°C' });
});

test('every unit that a declaration names has one in the other set', () => {
  const blocks = library.blocks.map(describeBlock);
  const tables = library.tables.map(describeTable);
  const declared = [
    ...blocks.flatMap(({ fields, results }) => [...fields, ...results]),
    ...tables.flatMap((t) => t.columns),
  ];
  for (const { unit, tradeUnit } of declared) {
    expect(metric, `${unit} → ${tradeUnit}`).not.toContain(tradeUnit);
    expect(unitNamed(tradeUnit)!.dimension).toEqual(unitNamed(unit)!.dimension);
  }
  for (const unit of inches) expect(unitNamed(shownUnit(unit, 'metric'))!.system).not.toBe('inch_pound');
});
