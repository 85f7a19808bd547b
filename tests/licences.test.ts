import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

interface Package {
  readonly license?: string;
  readonly integrity?: string;
  readonly dev?: boolean;
  readonly hasInstallScript?: boolean;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly devDependencies?: Readonly<Record<string, string>>;
}

const read = <T>(name: string): T => JSON.parse(readFileSync(new URL(`../${name}`, import.meta.url), 'utf8'));
const own = read<Package>('package.json');
const { '': root, ...packages } = read<{ packages: Readonly<Record<string, Package>> }>('package-lock.json').packages;
const nameOf = (place: string): string => place.replace(/^.*node_modules\//, '');

const SHIPPED: ReadonlySet<string> = new Set([
  ...['MIT', 'ISC', '0BSD', 'BSD-2-Clause', 'BSD-3-Clause', 'Apache-2.0', 'Unlicense', 'Zlib'],
]);
const TOOLS: ReadonlySet<string> = new Set([...SHIPPED, 'MPL-2.0', 'BlueOak-1.0.0', 'CC-BY-4.0']);
/** Whose field says something else, and what their own licence file says. */
const OTHERS: Readonly<Record<string, string>> = {
  '@fontsource/b612': 'OFL-1.1',
  // Bitstream Vera, as its README says.
  'dejavu-fonts-ttf': 'SEE LICENSE IN README.md AND LICENSE',
};

/** Whether a licence expression is met by what is allowed: all of an AND, one of an OR. */
function allows(allowed: ReadonlySet<string>, expression: string): boolean {
  const plain = expression.replace(/^\((.*)\)$/, '$1');
  return plain.split(' OR ').some((either) => either.split(' AND ').every((one) => allowed.has(one)));
}

function refused(all: Readonly<Record<string, Package>>): string[] {
  return Object.entries(all).flatMap(([place, { license = 'none', dev = false }]) => {
    const name = nameOf(place);
    if (OTHERS[name] === license || allows(dev ? TOOLS : SHIPPED, license)) return [];
    return [`${name} has the licence ${license}`];
  });
}

describe('what the lock file names', () => {
  test('has a licence that is allowed', () => expect(refused(packages)).toEqual([]));

  test('has the digest of what is installed', () => {
    const without = Object.entries(packages).flatMap(([place, { integrity = '' }]) =>
      /^sha512-[A-Za-z0-9+/]{86}==$/.test(integrity) ? [] : [place],
    );
    expect(without).toEqual([]);
  });

  test('is what package.json asks for, each in one version', () => {
    expect(root?.dependencies).toEqual(own.dependencies);
    expect(root?.devDependencies).toEqual(own.devDependencies);
    const asked = Object.entries({ ...own.dependencies, ...own.devDependencies });
    expect(asked.filter(([name, version]) => !(`node_modules/${name}` in packages) || !/^\d/.test(version))).toEqual(
      [],
    );
  });

  test('runs nothing when it is installed', () => {
    // core-js prints a line that asks for donations; nothing needs it.
    const scripts = Object.entries(packages).flatMap(([place, each]) => (each.hasInstallScript ? [nameOf(place)] : []));
    expect(scripts).toEqual(['core-js']);
  });
});

test('a licence that is not allowed is told, a tool may have more', () => {
  expect(
    refused({
      'node_modules/a': { license: 'GPL-3.0-only' },
      'node_modules/b': {},
      'node_modules/c': { license: 'MPL-2.0' },
      'node_modules/d': { license: 'MPL-2.0', dev: true },
      'node_modules/e': { license: '(MIT AND GPL-3.0-only)' },
      'node_modules/e/node_modules/f': { license: '(MPL-2.0 OR Apache-2.0)' },
      'node_modules/g': { license: '(MIT AND Zlib)' },
    }),
  ).toEqual([
    'a has the licence GPL-3.0-only',
    'b has the licence none',
    'c has the licence MPL-2.0',
    'e has the licence (MIT AND GPL-3.0-only)',
  ]);
});
