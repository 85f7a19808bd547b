import { readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const engine = fileURLToPath(new URL('../../engine', import.meta.url));

/** Files that a file imports for use, not for their types alone. */
function importsOf(file: string): string[] {
  const text = readFileSync(file, 'utf8');
  const found: string[] = [];
  for (const [, clause, from] of text.matchAll(/^(?:import|export)\s+([^;]*?)\s+from\s+'(\.[^']+)';/gms)) {
    const names = clause!.replace(/[{}]/g, '').split(',');
    const isType = (name: string): boolean => /^\s*type\s/.test(name) || name.trim() === '';
    // A data file leads no further.
    if (clause!.startsWith('type ') || names.every(isType) || from!.endsWith('?raw')) continue;
    found.push(`${join(dirname(file), from!)}.ts`);
  }
  return found;
}

function reachedFrom(file: string): string[] {
  const reached = new Set([file]);
  for (const each of reached) for (const imported of importsOf(each)) reached.add(imported);
  return [...reached].map((each) => relative(engine, each));
}

test('what the page imports of the engine computes nothing of the trade', () => {
  const files = reachedFrom(join(engine, 'index.ts'));
  expect(files).toContain('sheet/transaction.ts');
  // Fields of a text that somebody pastes, names of costs, what is said with a study and of what was not found, how reasons are put together: no table, no placing.
  const plain = [
    ...['library/csv.ts', 'study/best/words.ts', 'study/mends/told.ts', 'study/place/told.ts'],
    ...['study/tables/reasons.ts', 'study/day/told.ts', 'study/trim/told.ts'],
  ];
  const trade = /^(?:physics|numerics|library|study)\//;
  expect(files.filter((file) => trade.test(file) && !plain.includes(file))).toEqual([]);
  expect(files.filter((file) => file.startsWith('blocks/'))).toEqual([
    'blocks/fill-caution.ts',
    'blocks/tank/parts.ts',
    'blocks/outline.ts',
    'blocks/block.ts',
    'blocks/curve.ts',
    'blocks/role-words.ts',
  ]);
});

test('compiling does reach physics', () => {
  expect(reachedFrom(join(engine, 'sheet/compile.ts'))).toContain('physics/mass.ts');
});
