import { describe, expect, test } from 'vitest';
import { startBuilding } from '../../../engine/sheet/builder';
import { compile } from '../../../engine/sheet/compile';
import type { Cell, Document } from '../../../engine/sheet/document';
import { openText, serialise } from '../../../engine/sheet/file';
import { faultsOfLive, openLive } from '../../../engine/sheet/live';
import { tradeSteps } from '../../../engine/sheet/steps/trade';
import { LENGTH } from '../../../engine/units/index';
import { documentOf, formula, library, tailStock, variable, variables } from './small';

const told = { title: '', symbol: '', doc: '' };
const many = <T>(count: number, one: (k: number) => T): T[] => Array.from({ length: count }, (_, k) => one(k));

/** The messages of a design that was written to a file and opened again. */
function messagesOf(document: Document): string[] {
  const opened = openText(serialise(document));
  if (!opened.ok) return [opened.message];
  return faultsOfLive(openLive(opened.document, library)).map((fault) => fault.message);
}

describe('a name that nothing has', () => {
  const known = variables('known', ...many(300, (k) => variable(`${'n'.repeat(50)}_${k}`, '', '1')));
  const used = (name: string): string[] =>
    messagesOf(documentOf([known, formula('sums', Object.fromEntries(many(100, (k) => [`x${k}`, `${name} + ${k}`])))]));

  test('is told at each use, with the one that was meant', () => {
    const message = `Nothing is called ${'n'.repeat(49)}m_77. Did you mean ${'n'.repeat(50)}_77?`;
    expect(used(`${'n'.repeat(49)}m_77`)).toEqual(many(100, () => message));
  });
  test('and is longer than any name is told without one', () => {
    const name = 'n'.repeat(1000);
    const message = `Nothing is called ${name}. Write the name of a variable, a formula line or a result.`;
    expect(used(name)).toEqual(many(100, () => message));
  });
  test('is looked for in one list, which is made anew only when something is laid', () => {
    const { builder, readable } = startBuilding(documentOf([]), library, tradeSteps);
    expect(readable()).toBe(readable());
    expect(builder.paths()).toBe(builder.paths());
    const before = readable();
    builder.value({ ...told, cell: 'c', path: 'new', slot: 0, dimension: LENGTH, unit: 'm', kind: 'formula' });
    expect(before).not.toContain('new');
    expect(readable()).toContain('new');
    expect(builder.paths()).toContain('new');
  });
});

describe('a list that is longer than any builder needs', () => {
  type Stack = Extract<Cell, { kind: 'choice' }>;
  const stock = tailStock() as Stack;
  const [soft] = stock.options as [Stack['options'][number]];
  const layered = (count: number): Document => {
    const layers = many(count, (k) => ({ name: `l${k}`, material: 'soft_wood', text: '1 mm' }));
    return documentOf([{ ...stock, options: [{ ...soft, layers }] }]);
  };
  const offering = (count: number): Document => {
    const options = many(count, (k) => ({ ...soft, name: `o${k}` }));
    return documentOf([{ ...stock, text: 'o1', options }]);
  };
  const stepsOf = (document: Document): number => compile(document, library).program.steps.length;

  test('of layers is told with its limit, and computed no further', () => {
    const told = (count: number): string[] => [
      `Soft has ${count} layers. At most 200 are allowed: make several thin ones into one.`,
      'Tail stock waits for Soft.',
    ];
    expect(messagesOf(layered(200))).toEqual([]);
    expect(messagesOf(layered(201))).toEqual(told(201));
    expect(messagesOf(layered(20_000))).toEqual(told(20_000));
    expect(stepsOf(layered(20_000))).toBe(stepsOf(layered(200)));
  });
  test('of options is told with its limit, and computed no further', () => {
    const told = (count: number): string[] => [
      `Tail stock has ${count} options. At most 500 are allowed: remove some.`,
    ];
    expect(messagesOf(offering(500))).toEqual([]);
    expect(messagesOf(offering(501))).toEqual(told(501));
    expect(messagesOf(offering(5000))).toEqual(told(5000));
    expect(stepsOf(offering(5000))).toBe(stepsOf(offering(500)));
  });
});
