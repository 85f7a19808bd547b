import type { NameInfo } from '../terms/index';
import type { Slot, Step } from './program';

/** A short text that differs whenever names, slots or steps do, and never for the value of a constant. */
export function shapeOf(
  size: number,
  names: readonly NameInfo[],
  constants: ReadonlyMap<string, Slot>,
  steps: readonly Step[],
): string {
  const hash = startHash();
  hash.number(size);
  for (const name of names) addName(hash, name);
  for (const [path, slot] of constants) {
    hash.text(path);
    hash.number(slot);
  }
  for (const step of steps) hash.text(step.key);
  return hash.read();
}

function addName(hash: Hash, name: NameInfo): void {
  hash.text(name.path);
  hash.number(name.slot);
  hash.text(name.kind);
  hash.text(name.cell);
  hash.text(name.title);
  hash.text(name.symbol);
  hash.text(name.unit);
  hash.text(name.suffix);
  hash.text(name.ways?.join() ?? '');
  hash.text(name.doc);
  hash.number(name.settable ? 1 : 0);
  const { length, mass, time, temperature, current } = name.dimension;
  for (const exponent of [length, mass, time, temperature, current]) hash.number(exponent);
  for (const option of name.options ?? []) hash.text(option);
}

interface Hash {
  text(text: string): void;
  number(x: number): void;
  read(): string;
}

const PRIME = 0x01000193;
/** Parts of a dimension may be halves and thirds. */
const WHOLE = 6;

/** FNV-1a twice over with two offsets: 64 bits are plenty to tell the shapes of one sitting apart. */
function startHash(): Hash {
  let a = 0x811c9dc5;
  let b = 0xcbf29ce4;
  const add = (code: number): void => {
    a = Math.imul(a ^ code, PRIME);
    b = Math.imul(b ^ (code + 1), PRIME) + (a >>> 15);
  };
  return {
    text(text) {
      for (let k = 0; k < text.length; k++) add(text.charCodeAt(k));
      add(text.length);
    },
    number: (x) => add(x * WHOLE),
    read: () => (a >>> 0).toString(36) + (b >>> 0).toString(36),
  };
}
