import { type ReadonlySignal, signal } from '@preact/signals';
import type { Document, EngineService, VariantGhost } from '../../engine/index';

export interface VariantGhosts {
  /** The variants that charts show; while a hand moves the design, as they were before. */
  readonly shown: ReadonlySignal<readonly VariantGhost[]>;
  /** The design is new and at rest. */
  refresh(revision: number): Promise<void>;
}

const NONE: readonly VariantGhost[] = [];

/** Asks the engine for the variants on the charts, where there are any, once for each design. */
export function createVariantGhosts(
  engine: Pick<EngineService, 'variantGhosts'>,
  document: ReadonlySignal<Document>,
): VariantGhosts {
  const shown = signal(NONE);
  let asked = -1;
  return {
    shown,
    async refresh(revision) {
      if (!document.peek().variants?.some((each) => each.on_charts)) {
        shown.value = NONE;
        return;
      }
      if (asked === revision) return;
      asked = revision;
      const answer = await engine.variantGhosts().catch(() => ({ revision, variants: NONE }));
      if (answer.revision === asked) shown.value = answer.variants;
    },
  };
}
