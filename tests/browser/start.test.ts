import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, onTestFinished, test } from 'vitest';

const script = fileURLToPath(new URL('../../.ci/start.mjs', import.meta.url));
const USUAL_PORT = 8420;

/** Somebody else has the usual port: this test, or whoever had it before. */
async function takeUsualPort(): Promise<void> {
  const other = createServer();
  onTestFinished(async () => void other.close());
  await new Promise<void>((taken) => {
    other.once('error', () => taken());
    other.listen(USUAL_PORT, '127.0.0.1', taken);
  });
}

async function addressPrintedBy(started: ChildProcess): Promise<string> {
  let said = '';
  for await (const piece of started.stdout ?? []) {
    said += piece;
    const address = /Tetherwright is at (\S+)/.exec(said)?.[1];
    if (address) return address;
  }
  throw new Error(`No address was printed, only: ${said}`);
}

test('with an empty home, the usual port taken and nothing to read, the printed address answers with the page', async () => {
  await takeUsualPort();
  const home = mkdtempSync(join(tmpdir(), 'home-'));
  const started = spawn(process.execPath, [script], {
    env: { ...process.env, HOME: home },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  onTestFinished(async () => {
    started.kill();
    await once(started, 'exit');
    rmSync(home, { recursive: true });
  });
  const address = await addressPrintedBy(started);
  expect(address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
  expect(address).not.toContain(`:${USUAL_PORT}/`);
  const answer = await fetch(address);
  expect(answer.status).toBe(200);
  expect(await answer.text()).toContain('<title>Tetherwright</title>');
});
