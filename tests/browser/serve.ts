import { fileURLToPath } from 'node:url';
import { preview } from 'vite';
import type { TestProject } from 'vitest/node';
import { buildIfStale } from '../../.ci/build.mjs';

declare module 'vitest' {
  export interface ProvidedContext {
    readonly address: string;
  }
}

/** Serves the built page, as it is served to people, while the browser tests run. */
export default async function serve(project: TestProject): Promise<() => Promise<void>> {
  if (buildIfStale() !== 0) throw new Error('The page could not be built, so there is nothing to look at.');
  const server = await preview({
    configFile: fileURLToPath(new URL('../../vite.config.ts', import.meta.url)),
    preview: { port: 0 },
    logLevel: 'warn',
  });
  const address = server.resolvedUrls?.local[0];
  if (!address) throw new Error('The page is not served at any address.');
  project.provide('address', address);
  return () => server.close();
}
