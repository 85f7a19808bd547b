import { effect, type ReadonlySignal, signal } from '@preact/signals';
import { cellsOf, type Document, type EngineService, type Snapshot } from '../../engine/index';
import { byPath } from './by-path';

/** What the parts made of each choice would weigh with each of its options, asked for when the hand rests. */
export function followMadeOf(
  engine: Pick<EngineService, 'madeOf'>,
  document: ReadonlySignal<Document>,
  snapshot: ReadonlySignal<Snapshot | undefined>,
  moving: ReadonlySignal<boolean>,
): (choice: string) => readonly number[] {
  const masses = signal<ReadonlyMap<string, readonly number[]>>(new Map());
  effect(() => {
    if (!snapshot.value || moving.value) return undefined;
    const choices = cellsOf(document.peek()).flatMap((cell) => (cell.kind === 'choice' ? [cell.name] : []));
    if (choices.length === 0) return undefined;
    let superseded = false;
    void engine.madeOf(choices).then((answer) => {
      if (!superseded) masses.value = new Map(choices.map((choice, k) => [choice, answer[k] ?? []]));
    });
    return () => {
      superseded = true;
    };
  });
  return byPath((choice) => masses.value.get(choice) ?? NONE);
}

const NONE: readonly number[] = [];
