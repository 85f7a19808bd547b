import { computed, type ReadonlySignal } from '@preact/signals';
import { type Cell, cellsOf, type Document, type Fault, type NameInfo, type Snapshot } from '../../engine/index';
import { byPath } from './by-path';

/** What the page reads of the document as a whole; each part changes by itself. */
export interface Overview {
  part<K extends keyof Document>(key: K): Document[K];
  /** Name of a cell by its id; '' where there is none. */
  cellName(id: string): string;
  /** Id of the cell in which a path lies; undefined where there is none. */
  cellHolding(path: string): string | undefined;
  /** What a person calls a place: the cell's title, and what in it where that has a title of its own. */
  placeTitle(place: Pick<Fault, 'cell' | 'path'>): string;
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
  names: ReadonlySignal<ReadonlyMap<string, NameInfo>>,
): Overview {
  const cellWith = (id: string | undefined): Cell | undefined => cellsOf(document.value).find((cell) => cell.id === id);
  return {
    part: byPath((key) => document.value[key as keyof Document]) as Overview['part'],
    cellName: (id) => cellWith(id)?.name ?? '',
    cellHolding(path) {
      // The name of a step, such as that of a whole block, is told with its fault only.
      const told = names.value.get(path) ?? snapshot.value?.faults.find((each) => each.path === path);
      const first = path.split('.', 1)[0];
      return told?.cell ?? cellsOf(document.value).find((cell) => cell.name === first)?.id;
    },
    placeTitle({ cell: id, path }) {
      const cell = cellWith(id);
      const title = names.value.get(path)?.title;
      if (!cell) return title ?? path;
      return title === undefined || title === cell.title ? cell.title : `${cell.title}: ${title}`;
    },
    drawingTitle: computed(() => cellsOf(document.value).find((cell) => cell.kind === 'drawing')?.title),
    baselineState: computed(() => {
      const { baseline, baseline_design: then } = document.value;
      if (!baseline) return 'none';
      return Object.keys(baseline).length === 0 && !then ? 'same' : 'moved';
    }),
    baselineText: byPath((path) => document.value.baseline?.[path]),
  };
}
