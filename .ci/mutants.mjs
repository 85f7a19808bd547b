// npm run mutants: makes the physics wrong at one place after another and tells which of these faults no test notices.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { chooseMutants } from './mutants/choose.mjs';
import { holdersIn } from './mutants/holders.mjs';
import { mutantsOf } from './mutants/places.mjs';
import { reachedBy } from './mutants/reached.mjs';
import { openRunner } from './mutants/runner.mjs';
import { checkNode, installIfNeeded, root, runNode } from './project.mjs';

const HELP = `npm run mutants -- [--seed 1] [--count 200] [--in WORD]

Turns a sign, drops a term or makes a number 5 % larger in engine/physics, runs the tests that reach the place, and lists the
changes that all of them let pass: each wants a test, or its reason in tests/published/mutants.accepted.json.
--in: only places whose line in the list has this word, such as a file or a function.`;

const { values } = parseArgs({
  options: {
    seed: { type: 'string', default: '1' },
    count: { type: 'string', default: '200' },
    in: { type: 'string', default: '' },
    help: { type: 'boolean', default: false },
  },
});
if (values.help) {
  console.log(HELP);
  process.exit(0);
}
checkNode();
installIfNeeded();
if (runNode('.ci/grammar.mjs') !== 0) process.exit(1);

/** @param {string} folder @returns {Map<string, string>} what its files hold, by path from the root */
const sourcesIn = (folder) =>
  new Map(
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts') && !/(^|[\\/])(index|domain)\.ts$/.test(name))
      .sort()
      .map((name) => [`${folder}/${name.replaceAll('\\', '/')}`, readFileSync(join(root, folder, name), 'utf8')]),
  );
const sources = sourcesIn('engine/physics');
const blocks = [...sourcesIn('engine/blocks').values()];
const all = [...sources].flatMap(([file, source]) => mutantsOf(file, source));
const chosen = chooseMutants(
  all.filter(({ id }) => id.includes(values.in)),
  Number(values.seed),
  Number(values.count),
);
/** @type {Map<string, string>} */
const accepted = new Map(
  JSON.parse(readFileSync(join(root, 'tests/published/mutants.accepted.json'), 'utf8')).map(
    (/** @type {{ mutant: string, reason: string }} */ { mutant, reason }) => [mutant, reason],
  ),
);

const reach = await reachedBy([...sources.keys()]);
const holdersOf = holdersIn(sources, (name) => blocks.some((text) => new RegExp(`\\b${name}\\b`).test(text)), reach);
/** @type {import('./mutants/places.mjs').Mutant | undefined} */
let mutant;
const runner = await openRunner({
  change: (file, source) =>
    mutant?.file === file ? source.slice(0, mutant.start) + mutant.text + source.slice(mutant.end) : source,
  isolate: false,
  bail: 1,
});
let survivors = 0;
let waived = 0;
let stale = 0;
let before = '';
for (const each of chosen) {
  mutant = each;
  const tests = holdersOf(each);
  const { failed } = tests.length > 0 ? await runner.run(tests, [before, each.file].filter(Boolean)) : { failed: [] };
  before = each.file;
  const place = `${each.file}:${each.line}  ${each.id.slice(each.file.length + 1)}`;
  const reason = accepted.get(each.id);
  if (failed.length > 0) {
    if (reason) {
      stale++;
      console.log(`NOTICED, so it needs no reason any more: ${place}`);
    }
  } else if (reason) waived++;
  else {
    survivors++;
    console.log(`${place}${tests.length === 0 ? '  (no test comes here)' : ''}`);
  }
}
await runner.close();
console.log(
  `${chosen.length} of ${all.length} places (seed ${values.seed}): ${chosen.length - survivors - waived} noticed, ${waived} with a reason, ${survivors} not noticed.`,
);
process.exit(survivors + stale > 0 ? 1 : 0);
