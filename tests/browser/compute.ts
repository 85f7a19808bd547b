import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';

const script = fileURLToPath(new URL('../../.ci/compute.mjs', import.meta.url));

/** What `npm run compute` answers to these words. */
export async function compute(...words: string[]): Promise<string> {
  const { stdout } = await promisify(execFile)(process.execPath, [script, ...words], { encoding: 'utf8' });
  return stdout;
}
