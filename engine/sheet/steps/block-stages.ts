import type { AnyBlock } from '../../blocks/block';
import { isLink } from '../../blocks/block';
import type { BlockStepSpec } from './block';

/** The steps of a block: what others can link to, and what it computes once those have their numbers. */
export function stagesOf(whole: BlockStepSpec): readonly BlockStepSpec[] {
  const { block, fields, results } = whole;
  const { after } = block;
  if (!after) return [whole];
  const own = new Set(after.fields);
  const late = new Set(after.results);
  const first: BlockStepSpec = {
    ...whole,
    block: firstOf(block),
    fields: without(fields, own),
    results: without(results, late),
  };
  const second: BlockStepSpec = {
    ...whole,
    block: {
      ...block,
      // Ranges of the others have been looked at before.
      fields: pick(block.fields, (name, spec) => isLink(spec) || own.has(name)),
      results: pick(block.results, (name) => late.has(name)),
      reasons: {},
      slow: undefined,
      run: (m, f, r, i) => {
        after.run(m, f, r, i);
        return undefined;
      },
    },
    at: `${whole.path}.${after.results.find((name) => !(name in block.fields)) ?? after.results[0]}`,
    earlier: first.results,
    results: new Map([...results].filter(([name]) => late.has(name))),
  };
  return [first, second];
}

/** A block without what it computes later: what its picture and its traces are made from. */
export function firstOf(block: AnyBlock): AnyBlock {
  const own = new Set(block.after?.fields);
  const late = new Set(block.after?.results);
  return {
    ...block,
    fields: pick(block.fields, (name) => !own.has(name)),
    results: pick(block.results, (name) => !late.has(name)),
  };
}

function pick<T>(record: Readonly<Record<string, T>>, wanted: (name: string, each: T) => boolean): Record<string, T> {
  return Object.fromEntries(Object.entries(record).filter(([name, each]) => wanted(name, each)));
}

const without = <T>(map: ReadonlyMap<string, T>, names: ReadonlySet<string>): ReadonlyMap<string, T> =>
  new Map([...map].filter(([name]) => !names.has(name)));
