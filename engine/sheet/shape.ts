import type { NameInfo } from '../protocol';
import type { Slot, Step } from './program';

/** A short text that differs whenever names, slots or steps do, and never for the value of a constant. */
export function shapeOf(
  size: number,
  names: readonly NameInfo[],
  constants: ReadonlyMap<string, Slot>,
  steps: readonly Step[],
): string {
  const hash = startHash();
  hash.add(String(size));
  for (const name of names) addName(hash, name);
  for (const [path, slot] of constants) hash.add(`${path} ${slot}`);
  for (const step of steps) hash.add(step.key);
  return hash.text();
}

function addName(hash: Hash, name: NameInfo): void {
  const { path, slot, kind, cell, title, symbol, unit, suffix, doc, options, settable } = name;
  const { length, mass, time, temperature, current } = name.dimension;
  hash.add(`${path} ${slot} ${kind} ${cell} ${settable} ${length} ${mass} ${time} ${temperature} ${current}`);
  for (const text of [title, symbol, unit, suffix, doc]) hash.add(text);
  if (options) hash.add(options.join(' '));
}

interface Hash {
  add(text: string): void;
  text(): string;
}

/** FNV-1a twice over with two offsets: 64 bits are plenty to tell the shapes of one sitting apart. */
function startHash(): Hash {
  const PRIME = 0x01000193;
  let a = 0x811c9dc5;
  let b = 0xcbf29ce4;
  return {
    add(text: string): void {
      for (let k = 0; k < text.length; k++) {
        const code = text.charCodeAt(k);
        a = Math.imul(a ^ code, PRIME);
        b = Math.imul(b ^ (code + k), PRIME);
      }
      a = Math.imul(a ^ 0xff, PRIME);
      b = Math.imul(b ^ 0xff, PRIME);
    },
    text: (): string => (a >>> 0).toString(36) + (b >>> 0).toString(36),
  };
}
