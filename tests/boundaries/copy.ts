import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../', import.meta.url));
/** What the two commands read of the project, but for the tests. */
const SOURCES = [
  'engine',
  'workbook',
  'data',
  '.ci',
  'tests/tsconfig.json',
  'tests/speed/slide.mjs',
  'package.json',
  'biome.json',
  'tsconfig.json',
  'vite.config.ts',
];

export interface Outcome {
  readonly code: number;
  readonly said: string;
}

export interface Copy {
  /** Writes a file of the copy, as path → text. */
  plant(files: Readonly<Record<string, string>>): void;
  /** Takes them away again; what stood in the place of one stands there as before. */
  remove(files: Iterable<string>): void;
  /** Runs a script of package.json in the copy. */
  npmRun(script: string, ...args: string[]): Outcome;
  discard(): void;
}

/**
 * A copy of the sources in which faults can be planted. The tests themselves stay behind, so that a fault planted in the copy is
 * the only thing that can be refused there; everything else is checked where it lies.
 */
export function copySources(): Copy {
  const folder = mkdtempSync(join(tmpdir(), 'boundaries-'));
  for (const source of SOURCES) cpSync(join(root, source), join(folder, source), { recursive: true });
  symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'));
  return {
    plant(files) {
      for (const [path, text] of Object.entries(files)) {
        mkdirSync(dirname(join(folder, path)), { recursive: true });
        writeFileSync(join(folder, path), text);
      }
    },
    remove(files) {
      for (const path of files) {
        rmSync(join(folder, path));
        if (existsSync(join(root, path))) cpSync(join(root, path), join(folder, path));
      }
    },
    npmRun(script, ...args) {
      const ran = spawnSync('npm', ['run', '--silent', script, '--', ...args], {
        cwd: folder,
        encoding: 'utf8',
        stdio: ['ignore', 'pipe', 'pipe'],
        shell: process.platform === 'win32',
      });
      return { code: ran.status ?? 1, said: `${ran.stdout}${ran.stderr}` };
    },
    discard: () => rmSync(folder, { recursive: true, force: true }),
  };
}
