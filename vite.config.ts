import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { defineConfig } from 'vitest/config';
import { iconPng, icons } from './.ci/icons.mjs';

const here = fileURLToPath(new URL('.', import.meta.url));

/**
 * What the page may load and run: its own files and nothing else, no code made from strings. Sent as a header with every
 * response, since a rule in the page alone doesn't reach its workers; and written into the page, for hosts that send no headers.
 * Styles may be inline because the charts and the editor write style elements.
 */
const policy = [
  "default-src 'self'",
  "script-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "worker-src 'self'",
  "connect-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
].join('; ');

const policyInPage: Plugin = {
  name: 'policy-in-page',
  apply: 'build',
  transformIndexHtml: () => [
    { tag: 'meta', attrs: { 'http-equiv': 'Content-Security-Policy', content: policy }, injectTo: 'head-prepend' },
  ],
};

const offlineInPage: Plugin = {
  name: 'offline-in-page',
  apply: 'build',
  transformIndexHtml: {
    order: 'pre',
    handler: () => [{ tag: 'script', attrs: { type: 'module', src: './offline.ts' }, injectTo: 'head' }],
  },
};

/** What the maker of PDFs would fetch to read pages and pictures, which nobody asks of it. */
const NEVER_ASKED = /^(?:canvg|html2canvas|dompurify)$/;
const withoutReaders: Plugin = {
  name: 'without-readers',
  enforce: 'pre',
  resolveId: (id) => (NEVER_ASKED.test(id) ? '\0never-asked' : undefined),
  load: (id) => (id === '\0never-asked' ? 'export default undefined;' : undefined),
};

/** The icons of the installed page, and the one that some phones take from the page itself. */
const iconsOfBuild: Plugin = {
  name: 'icons-of-build',
  apply: 'build',
  generateBundle() {
    for (const icon of icons) this.emitFile({ type: 'asset', fileName: icon.file, source: iconPng(icon) });
  },
  transformIndexHtml: {
    order: 'post',
    handler: () => [{ tag: 'link', attrs: { rel: 'apple-touch-icon', href: `./${icons[0]!.file}` }, injectTo: 'head' }],
  },
};

/** Keeps every file of the page for the flying field, where there's no connection. */
const offline = VitePWA({
  filename: 'offline.js',
  registerType: 'prompt',
  injectRegister: false,
  manifest: {
    name: 'Tetherwright',
    short_name: 'Tetherwright',
    description: 'Design trade studies for control-line model aircraft.',
    lang: 'en',
    id: './',
    start_url: './',
    scope: './',
    display: 'standalone',
    background_color: '#dfdbd0',
    theme_color: '#fbf8f0',
    icons: [
      { src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' },
      ...icons
        .filter(({ purpose }) => purpose !== '')
        .map(({ file, size, purpose }) => ({ src: file, sizes: `${size}x${size}`, type: 'image/png', purpose })),
    ],
  },
  workbox: {
    globPatterns: ['**/*.{html,js,css,svg,png,json,csv,ttf,woff,woff2}'],
    maximumFileSizeToCacheInBytes: 8_000_000,
    inlineWorkboxRuntime: true,
    cleanupOutdatedCaches: true,
  },
});

const ALONE = 'tests/**/*.alone.test.{ts,tsx}';
/** The engine's numbers never come from code made of strings: it's refused in its tests as the page's policy refuses it. */
const FROM_NO_STRINGS = ['--disallow-code-generation-from-strings'];
/** Designs are compiled one after the other, and with more room for what is young less of it is carried from place to place: a quarter of the time. */
const ROOM = ['--max-semi-space-size=64'];

export default defineConfig({
  root: `${here}workbook`,
  base: './',
  cacheDir: `${here}.cache/vite`,
  plugins: [policyInPage, offlineInPage, withoutReaders, iconsOfBuild, offline],
  worker: { format: 'es' },
  // The policy refuses data: fonts, so nothing is written into the style sheet.
  build: {
    outDir: `${here}dist`,
    emptyOutDir: true,
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 1000,
    rollupOptions: { input: [`${here}workbook/index.html`, `${here}workbook/reference.html`] },
  },
  server: { host: '127.0.0.1', fs: { allow: [here] } },
  // The port is always tried first, since a browser keeps designs by address.
  preview: { host: '127.0.0.1', port: 8420, headers: { 'Content-Security-Policy': policy } },
  test: {
    // Two files at a time, on a machine with two cores as well.
    maxWorkers: 2,
    projects: [
      {
        extends: true,
        root: here,
        test: {
          name: 'unit',
          // They stand back for the browser's.
          testTimeout: 180_000,
          hookTimeout: 180_000,
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: ['tests/browser/**', 'tests/boundaries/**', ALONE],
          // All files of a worker share what they import, which otherwise takes as long as the tests themselves.
          isolate: false,
          execArgv: [...FROM_NO_STRINGS, ...ROOM],
        },
      },
      {
        extends: true,
        root: here,
        test: {
          // Files that put something else in a module's place: in a process of their own, so that no other file meets it.
          name: 'alone',
          include: [ALONE],
          testTimeout: 180_000,
          hookTimeout: 180_000,
          // Code is compiled where it runs and not beside it, so that what is measured doesn't hang on who else needs the processor.
          execArgv: [...FROM_NO_STRINGS, ...ROOM, '--no-concurrent-recompilation'],
        },
      },
      {
        extends: true,
        root: here,
        test: {
          name: 'boundaries',
          include: ['tests/boundaries/**/*.test.ts'],
          testTimeout: 180_000,
          hookTimeout: 180_000,
        },
      },
      {
        extends: true,
        root: here,
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: 'tests/browser/serve.ts',
          testTimeout: 300_000,
          hookTimeout: 180_000,
          // A loaded machine takes its time, and no test may hang on how fast it is.
          expect: { poll: { timeout: 30_000 } },
          // A browser that was starved for a moment gets a second go; what is broken fails twice.
          retry: 1,
          // The files of a worker share its browser.
          isolate: false,
        },
      },
    ],
  },
});
