// npm run bench: how many flights a second one core solves, what sweeps cost, and how soon the charts follow the hand.
import { execFileSync } from 'node:child_process';
import { cpus, loadavg } from 'node:os';
import { buildIfStale } from './build.mjs';
import { makeForNode } from './for-node.mjs';
import { checkNode, installIfNeeded } from './project.mjs';

checkNode();
installIfNeeded();

console.log(`${cpus().length} cores, ${cpus()[0]?.model.trim()}, Node ${process.versions.node}`);
const load = loadavg()[0] ?? 0;
console.log(
  `load of the machine before: ${load.toFixed(1)}${load > 0.5 ? '; others are at work on it, so times are longer than they need be' : ''}\n`,
);

const { measureFlights } = await import(await makeForNode('tests/speed/flight.ts'));
const flights = measureFlights();
console.log(
  `flight solutions from cold starts on one core: median ${whole(flights.perSecond)} a second, best ${whole(flights.best)} (aim 150 000), ${flights.steps.toFixed(1)} steps each`,
);

// Some processes never compile a hot function well, so that one alone tells little.
const lapFile = await makeForNode('tests/speed/lap.ts');
/** @type {{ lines: string, lap: number, flights: number }[][]} */
const processes = Array.from({ length: 10 }, () =>
  JSON.parse(
    execFileSync(
      process.execPath,
      ['--input-type=module', '-e', `console.log(JSON.stringify((await import('${lapFile}')).measureLap()))`],
      { encoding: 'utf8' },
    ),
  ),
);
for (const [k, { lines }] of (processes[0] ?? []).entries()) {
  const times = processes.map((each) => each[k]?.lap ?? Number.NaN).sort((a, b) => a - b);
  const ratios = processes.map((each) => each[k]?.flights ?? Number.NaN).sort((a, b) => a - b);
  console.log(
    `lap in wind on ${lines}: ${times[5]?.toFixed(0)} µs, that of ${ratios[5]?.toFixed(0)} steady flights, in the middle of ten processes; ${times[9]?.toFixed(0)} µs, ${ratios[9]?.toFixed(0)} flights, in the slowest`,
  );
}

const { measureSurfaces } = await import(await makeForNode('tests/speed/tank.ts'));
console.log(`fuel surfaces a second on one core: ${whole(measureSurfaces())}`);

const { measureMoves, measureSheet } = await import(
  await makeForNode('tests/speed/sheet.ts', ['tests/designs', 'workbook/store/shown.ts'])
);
const sheet = await measureSheet();
console.log(`the demo in the engine alone: opened in ${sheet.open.toFixed(0)} ms`);
for (const [name, ms] of Object.entries(sheet.move)) console.log(`  ${name} moved: ${ms.toFixed(2)} ms`);
for (const [name, count] of Object.entries(sheet.designs)) console.log(`  ${name}: ${whole(count)} designs a second`);
for (const [name, { shown, whole }] of Object.entries(await measureMoves())) {
  console.log(
    `  ${name} moved with its sheet on the screen: ${shown.toFixed(2)} ms, everything ${whole.toFixed(2)} ms (${(whole / shown).toFixed(1)} times)`,
  );
}

const { measureAllocation } = await import(await makeForNode('tests/speed/allocation.ts', ['tests/designs']));
console.log(`a design of a sweep leaves ${measureAllocation().toFixed(0)} bytes on the heap (aim 200)`);

const sampler = await makeForNode('engine/sampler-node.ts');
const { growthOf, measureAxes, measurePool, measureShare, measureSizes } = await import(
  await makeForNode('tests/speed/sweeps.ts', ['tests/designs'])
);
const { ms, efficiency } = await measurePool(sampler);
console.log(
  `100 × 100 designs with the whole flight: ${[...ms].map(([size, time]) => `${time.toFixed(0)} ms on ${size} worker${size > 1 ? 's' : ''}`).join(', ')}, efficiency ${efficiency.toFixed(2)} (aim 0.85)`,
);
const share = await measureShare();
console.log(
  `a design costs ${share.whole.toFixed(0)} µs by computing the whole sheet; in a sweep ${share.balance.toFixed(1)} µs for the balance (${(share.whole / share.balance).toFixed(0)} times less), ${share.flight.toFixed(1)} µs with the flight (${(share.whole / share.flight).toFixed(1)} times less)`,
);
const sizes = await measureSizes();
for (const { designs, each, memory, arrays } of sizes) {
  console.log(
    `${whole(designs)} designs × 8 results: ${each.toFixed(1)} µs each, at most ${memory.toFixed(0)} MB more memory, ${arrays.toFixed(0)} MB of it numbers${designs >= 1e6 ? ' (aim 300 MB)' : ''}`,
  );
}
console.log(`the time of a sweep grows as its designs to the power of ${growthOf(sizes).toFixed(2)}`);
/** @type {number[]} */
const along = await measureAxes();
console.log(
  `some 1000 designs along one to four axes: ${along.map((each) => `${each.toFixed(1)} µs`).join(', ')} each; four axes cost ${((along[3] ?? Number.NaN) / (along[0] ?? Number.NaN)).toFixed(2)} times one`,
);

if (buildIfStale() !== 0) process.exit(1);
const { measureSlide } = await import('../tests/speed/slide.mjs');
/** @type {readonly (readonly [variable: string, sheet: string])[]} */
const slides = [
  ['engine_station', 'Decide'],
  ['line_length', 'Decide'],
  ['axle_x', 'Will it nose over, will the gear hold?'],
  ['tank_height', 'Will it feed?'],
  ['handle_spacing', 'Do the controls have enough?'],
];
for (const [variable, title] of slides) {
  const times = (await measureSlide(variable, title)).sort((a, b) => a - b);
  const share = (/** @type {number} */ part) => times[Math.floor(part * (times.length - 1))] ?? Number.NaN;
  console.log(
    `${variable} of “${title}” to redrawn charts: median ${share(0.5).toFixed(0)} ms, 95th percentile ${share(0.95).toFixed(0)} ms over ${times.length} moves (aim 50 ms)`,
  );
}

/** @param {number} count */
function whole(count) {
  return String(Math.round(count)).replace(/\B(?=(\d{3})+$)/g, ' ');
}
