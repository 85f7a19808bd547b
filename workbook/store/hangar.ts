import { type ReadonlySignal, signal } from '@preact/signals';
import type { DesignDifferences, DesignTold, HangarService, PieceOffer } from '../../engine/index';
import { type Design, titleKey } from './keep/index';

/** How a design stands to the one of the same title that was changed last. */
export interface Apart {
  readonly from: Design;
  readonly differences: DesignDifferences;
}

/** What the engine tells of designs of this machine; computed when they are listed, and kept nowhere else. */
export interface Hangar {
  /** By the text of a design; missing where it isn't told yet or can't be read. */
  readonly told: ReadonlySignal<ReadonlyMap<string, DesignTold>>;
  /** By the id of a design that has the title of one changed later. */
  readonly apart: ReadonlySignal<ReadonlyMap<string, Apart>>;
  /** Asks for these designs one after another, so that an edit never waits for the list. Last changed first. */
  tell(designs: readonly Design[]): Promise<void>;
  /** How the first differs from the second; undefined where one can't be read. */
  between(first: Design, second: Design): Promise<DesignDifferences | undefined>;
  /** What another design can take of this one; undefined where it can't be read. */
  offers(design: Design): Promise<readonly PieceOffer[] | undefined>;
}

export function createHangar(engine: HangarService): Hangar {
  const told = signal<ReadonlyMap<string, DesignTold>>(new Map());
  const apart = signal<ReadonlyMap<string, Apart>>(new Map());
  let asked: readonly Design[] = [];

  async function tellAll(designs: readonly Design[]): Promise<void> {
    const texts = new Set(designs.map(({ text }) => text));
    told.value = new Map([...told.value].filter(([text]) => texts.has(text)));
    for (const { text } of designs) {
      if (told.value.has(text)) continue;
      const answer = await engine.tellDesign(text);
      if (asked !== designs) return;
      if (answer) told.value = new Map([...told.value, [text, answer]]);
    }
  }

  async function tellApart(designs: readonly Design[]): Promise<void> {
    const found = new Map<string, Apart>();
    const newest = new Map<string, Design>();
    for (const design of designs) {
      const from = newest.get(titleKey(design.title));
      if (!from) newest.set(titleKey(design.title), design);
      const differences = from && (await engine.tellApart(design.text, from.text));
      if (asked !== designs) return;
      if (from && differences) found.set(design.id, { from, differences });
    }
    apart.value = found;
  }

  return {
    told,
    apart,
    async tell(designs) {
      asked = designs;
      await tellAll(designs);
      await tellApart(designs);
    },
    between: (first, second) => engine.tellApart(first.text, second.text),
    offers: (design) => engine.offers(design.text),
  };
}
