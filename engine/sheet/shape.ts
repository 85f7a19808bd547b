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
  for (const name of names) hash.add(JSON.stringify(name));
  for (const [path, slot] of constants) hash.add(`${path} ${slot}`);
  for (const step of steps) hash.add(step.key);
  return hash.text();
}

/** FNV-1a twice over with two offsets: 64 bits are plenty to tell the shapes of one sitting apart. */
function startHash() {
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
