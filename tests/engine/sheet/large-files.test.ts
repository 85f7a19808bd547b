import { describe, expect, test } from 'vitest';
import type { Document } from '../../../engine/sheet/document';
import { openText, serialise } from '../../../engine/sheet/file';
import { faultsOfLive, openLive } from '../../../engine/sheet/live';
import { documentOf, formula, library, variable, variables } from './small';

const many = <T>(count: number, one: (k: number) => T): T[] => Array.from({ length: count }, (_, k) => one(k));

/** The messages of a design that was written to a file and opened again. */
function messagesOf(document: Document): string[] {
  const opened = openText(serialise(document));
  if (!opened.ok) return [opened.message];
  return faultsOfLive(openLive(opened.document, library)).map((fault) => fault.message);
}

describe('a name that nothing has', () => {
  // Each use against each name, letter by letter, would be thousands of millions of steps.
  const known = variables('known', ...many(2000, (k) => variable(`${'n'.repeat(50)}_${k}`, '', '1')));
  const lines = (count: number, name: string): Record<string, string> =>
    Object.fromEntries(many(count, (k) => [`x${k}`, `${name} + ${k}`]));
  const used = (count: number, name: string): string[] =>
    messagesOf(documentOf([known, formula('sums', lines(count, name))]));

  test('is looked for once, however often it is used', () => {
    const messages = used(1000, `${'n'.repeat(49)}m_77`);
    expect(messages.length).toBe(1000);
    expect(messages[0]).toBe(`Nothing is called ${'n'.repeat(49)}m_77. Did you mean ${'n'.repeat(50)}_77?`);
  });
  test('and longer than any name is not looked for', () => {
    const name = 'n'.repeat(1000);
    const messages = used(100, name);
    expect(messages.length).toBe(100);
    expect(messages[0]).toBe(`Nothing is called ${name}. Write the name of a variable, a formula line or a result.`);
  });
});
