// Which tests could notice a mutant: those that reach its function; of a constant, those that reach what names it.
import { parseSync } from 'vite';
import { ownersOf } from './places.mjs';

/** @typedef {import('./places.mjs').Mutant} Mutant */
/** @typedef {import('./reached.mjs').Reach} Reach */

/**
 * @param {ReadonlyMap<string, string>} sources of physics, by path
 * @param {(name: string) => boolean} isNamedByBlocks whether a block takes the constant itself
 * @param {Reach} reach
 * @returns {(mutant: Mutant) => string[]} the quickest test first
 */
export function holdersIn(sources, isNamedByBlocks, reach) {
  const owners = [...sources].flatMap(([file, source]) =>
    ownersOf(parseSync(file, source).program).map(({ name, node, body }) => {
      return { file, name, isFunction: body !== undefined, text: source.slice(node.start, node.end) };
    }),
  );
  /** @param {string} file @param {string} name @param {boolean} isFunction @returns {string[]} */
  const holding = (file, name, isFunction) => {
    if (isFunction) return reach.reached[`${file} ${name}`] ?? [];
    const naming = owners.filter((each) => each.name !== name && new RegExp(`\\b${name}\\b`).test(each.text));
    const fromBlocks = isNamedByBlocks(name)
      ? reach.tests.filter((test) => test.includes('/tests/engine/blocks/'))
      : [];
    return [...naming.flatMap((each) => holding(each.file, each.name, each.isFunction)), ...fromBlocks];
  };
  return ({ file, owner, isFunction }) => {
    const tests = new Set(holding(file, owner, isFunction));
    return reach.tests.filter((test) => tests.has(test));
  };
}
