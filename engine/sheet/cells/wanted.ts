import { named } from '../named';
import type { Builder } from '../specs';

/** Tells a fault of a piece. */
export type Say = (message: string) => void;

/** A piece that asks for results takes single numbers. */
export function checkWanted(
  { name, wanted }: { readonly name: string; readonly wanted: readonly string[] },
  builder: Builder,
  say: Say,
): void {
  for (const path of wanted) {
    const reach = builder.find(path);
    if (!reach) say(`${named(name)} asks for “${path}”: nothing has that name.${builder.meant(path)}`);
    else if (reach.kind === 'curve')
      say(`${named(name)} asks for ${named(path)}, which is a curve. Take a single number.`);
    else if (reach.type && reach.type.kind !== 'quantity') {
      say(`${named(name)} asks for ${named(path)}, which is one of a list. Take a number.`);
    }
  }
}
