// Makes the formula parser from its grammar: engine/formula/x.grammar → x.parser.ts and x.parser.terms.ts, when the grammar is newer.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const folder = fileURLToPath(new URL('../engine/formula/', import.meta.url));
const generator = fileURLToPath(new URL('../node_modules/@lezer/generator/src/lezer-generator.cjs', import.meta.url));

const changed = (/** @type {string} */ file) => (existsSync(file) ? statSync(file).mtimeMs : 0);

for (const name of readdirSync(folder).filter((file) => file.endsWith('.grammar'))) {
  const grammar = folder + name;
  const parser = grammar.replace(/\.grammar$/, '.parser');
  const made = Math.min(changed(`${parser}.ts`), changed(`${parser}.terms.ts`));
  if (made > changed(grammar)) continue;
  const run = spawnSync(process.execPath, [generator, grammar, '--typeScript', '--output', parser], {
    stdio: ['ignore', 'inherit', 'inherit'],
  });
  if (run.status !== 0) process.exit(1);
}
