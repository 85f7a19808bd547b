import { type Signal, signal } from '@preact/signals';
import type {
  Cell,
  ChartOffer,
  ChartWish,
  Document,
  EngineService,
  Fault,
  MakingAnswer,
  MakingPlace,
} from '../../engine/index';
import type { Editor } from './editor';

/** Pieces that are made of a number of the design: each is one step of undo. */
export interface Makings {
  /** Path of the number of which a chart is being made. */
  readonly charting: Signal<string | undefined>;
  chartOffer(of: string): Promise<ChartOffer>;
  /** What the chart would add to the design as it stands. */
  previewChart(wish: ChartWish): Promise<MakingAnswer>;
  /** Gives where the chart stands, or the sentence that says why it can't be made. */
  putChart(wish: ChartWish): Promise<MadePlace | string>;
  /** Id of the piece of the model for which another kind is picked. */
  readonly swapping: Signal<string | undefined>;
  previewSwap(cell: string, kind: string): Promise<MakingAnswer>;
  /** Puts another kind in the place of a piece; gives where it stands, or the sentence that says why it can't be. */
  putSwap(cell: Pick<Cell, 'id' | 'title'>, kind: string): Promise<MadePlace | string>;
  /** Puts a variable in place of the number that is typed at a path, says so and gives where it stands; undefined where it can't be. */
  makeVariable(path: string, title: string): Promise<MadePlace | undefined>;
}

type MadePlace = Pick<Fault, 'cell' | 'path'>;

export interface MakingsPorts {
  readonly engine: Pick<EngineService, 'chartOffer' | 'makeChart' | 'makeVariable' | 'swapKind'>;
  readonly editor: Editor;
  /** Where a piece that is made of the number at a path stands. */
  place(path: string): MakingPlace;
  /** Says what was done, with a way back. `after`: the document with it; missing where nothing was done. */
  tell(sentence: string, after?: Document): void;
}

/** An edit that comes between the asking and the answer asks again, so often at most. */
const MOST_TRIES = 3;

export function createMakings({ engine, editor, place, tell }: MakingsPorts): Makings {
  const { document } = editor;
  async function make(ask: () => Promise<MakingAnswer>, says: string): Promise<MakingAnswer> {
    for (let tries = 1; ; tries++) {
      editor.settle();
      const before = document.peek();
      const answer = await ask();
      if (!answer.ok) return answer;
      if (document.peek() !== before && tries < MOST_TRIES) continue;
      if (answer.document !== before) editor.change([{ change: 'design', document: answer.document }], says);
      return answer;
    }
  }
  return {
    charting: signal(undefined),
    chartOffer(of) {
      editor.settle();
      return engine.chartOffer(of);
    },
    previewChart: (wish) => engine.makeChart(wish, place(wish.of)),
    async putChart(wish) {
      const made = await make(() => engine.makeChart(wish, place(wish.of)), 'a chart');
      if (!made.ok) return made.message;
      tell(made.done, document.peek());
      return made;
    },
    swapping: signal(undefined),
    previewSwap(cell, kind) {
      editor.settle();
      return engine.swapKind(cell, kind);
    },
    async putSwap({ id, title }, kind) {
      const made = await make(() => engine.swapKind(id, kind), `another kind for ${title}`);
      if (!made.ok) return made.message;
      tell(made.done, document.peek());
      return made;
    },
    async makeVariable(path, title) {
      const made = await make(() => engine.makeVariable(path, place(path)), `a variable of ${title}`);
      if (!made.ok) {
        tell(made.message);
        return undefined;
      }
      if (made.done !== '') tell(made.done, document.peek());
      return made;
    },
  };
}
