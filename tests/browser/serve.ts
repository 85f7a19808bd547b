import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Plugin, preview } from 'vite';
import type { TestProject } from 'vitest/node';
import { buildIfStale } from '../../.ci/build.mjs';
import { QUERN } from './designs';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Where the small design stands in the place of the demo. */
    readonly address: string;
    /** Where the page is as a builder gets it. */
    readonly shipped: string;
  }
}

/** Gives the small design where the page asks for the demo. In the server and not in the browser, which would then keep no code that it has compiled. */
const smallDemo: Plugin = {
  name: 'small-demo',
  configurePreviewServer: ({ middlewares }) => {
    const body = `export default ${JSON.stringify(readFileSync(QUERN, 'utf8'))}`;
    middlewares.use((request, response, next) => {
      if (!/\/quern-25\.tetherwright-[^/]*\.js$/.test(request.url ?? '')) return next();
      response.setHeader('Content-Type', 'text/javascript');
      response.end(body);
    });
  },
};

/** Serves the built page, as it is served to people, while the browser tests run. */
export default async function serve(project: TestProject): Promise<() => Promise<void>> {
  if (buildIfStale() !== 0) throw new Error('The page could not be built, so there is nothing to look at.');
  const servers = await Promise.all(
    [[smallDemo], []].map((plugins) =>
      preview({
        configFile: fileURLToPath(new URL('../../vite.config.ts', import.meta.url)),
        plugins,
        preview: { port: 0 },
        logLevel: 'warn',
      }),
    ),
  );
  const [address, shipped] = servers.map((server) => server.resolvedUrls?.local[0]);
  if (!address || !shipped) throw new Error('The page is not served at any address.');
  project.provide('address', address);
  project.provide('shipped', shipped);
  return async () => void (await Promise.all(servers.map((server) => server.close())));
}
