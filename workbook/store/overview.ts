import { computed, type ReadonlySignal } from '@preact/signals';
import type { Document, Snapshot } from '../../engine/index';
import { byPath } from './by-path';

/** What the page reads of the document as a whole; each part changes by itself. */
export interface Overview {
  part<K extends keyof Document>(key: K): Document[K];
  /** Name of the cell with the first fault, or else of the first that waits. */
  readonly firstFault: ReadonlySignal<string | undefined>;
  /** Title of the first drawing of the sheet, the one that stands beside the cells; undefined when the sheet has none. */
  readonly drawingTitle: ReadonlySignal<string | undefined>;
  /** How the design stands to its baseline. */
  readonly baselineState: ReadonlySignal<'none' | 'same' | 'moved'>;
  /** What the baseline says at a path where it says something else. */
  baselineText(path: string): string | undefined;
}

export function createOverview(
  document: ReadonlySignal<Document>,
  snapshot: ReadonlySignal<Snapshot | undefined>,
): Overview {
  return {
    part: byPath((key) => document.value[key as keyof Document]) as Overview['part'],
    firstFault: computed(() => {
      const faults = snapshot.value?.faults ?? [];
      const first = faults.find((fault) => fault.state === 'fault') ?? faults[0];
      return document.value.cells.find((cell) => cell.id === first?.cell)?.name;
    }),
    drawingTitle: computed(() => document.value.cells.find((cell) => cell.kind === 'drawing')?.title),
    baselineState: computed(() => {
      const { baseline } = document.value;
      if (!baseline) return 'none';
      return Object.keys(baseline).length === 0 ? 'same' : 'moved';
    }),
    baselineText: byPath((path) => document.value.baseline?.[path]),
  };
}
