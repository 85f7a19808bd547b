import { type AnyBlock, isCurve, isLink, isNeeded, isOption, type Shape } from '../../../engine/blocks/block';

export type Numbers = Readonly<Record<string, number>>;
/** What a block answers: its results by name, or the reason why there are none. */
export interface Answer {
  readonly results: Numbers;
  readonly why: string | undefined;
  readonly shapes: readonly Shape[];
}

/** What a block draws where nothing has a number. */
export function drawNothing(block: AnyBlock): readonly Shape[] {
  const nowhere = new Proxy({}, { get: () => 0 });
  return block.draw ? block.draw(new Float64Array(1).fill(Number.NaN), nowhere, nowhere, nowhere) : [];
}

/** Runs one block on columns of its own: fields as typed or by default, linked blocks by their results. Sample `i` of `stride`. */
export function runBlock(
  block: AnyBlock,
  typed: Numbers = {},
  links: Readonly<Record<string, Numbers>> = {},
  { stride = 1, i = 0, outlines = {} as Readonly<Record<string, readonly number[]>> } = {},
): Answer {
  const start: number[] = [];
  const place = (value: number): number => {
    start.push(value);
    return (start.length - 1) * stride;
  };
  const fields: Record<string, unknown> = {};
  for (const [name, spec] of Object.entries(block.fields)) {
    if (isLink(spec) && !isNeeded(spec)) continue;
    if (isNeeded(spec)) {
      const given = links[name] ?? {};
      fields[name] = Object.fromEntries(
        Object.keys(spec.results).map((result) => [result, place(given[result] ?? Number.NaN)]),
      );
    } else {
      const blank = isOption(spec) ? spec.option.indexOf(spec.default) : spec.default;
      fields[name] = place(typed[name] ?? blank);
    }
  }
  for (const name of Object.keys(typed)) if (!(name in fields)) throw new RangeError(`there is no field ${name}`);
  const results: Record<string, number> = {};
  for (const [name, spec] of Object.entries(block.results)) {
    if (isCurve(spec)) throw new RangeError('curves can’t be set here');
    results[name] = place(Number.NaN);
  }
  const drawn = Object.fromEntries(
    Object.keys(block.outlines ?? {}).map((name) => {
      const [first] = [...(outlines[name] ?? []), Number.NaN].map(place);
      return [name, first!];
    }),
  );
  const m = new Float64Array(start.length * stride).fill(Number.NaN);
  start.forEach((value, k) => {
    m[k * stride + i] = value;
  });
  const why = block.run(m, fields, results, i, stride, drawn);
  if (why === undefined) block.after?.run(m, fields, results, i);
  return {
    results: Object.fromEntries(Object.entries(results).map(([name, at]) => [name, m[at + i]!])),
    why,
    shapes: stride === 1 && block.draw ? block.draw(m, fields, results, drawn) : [],
  };
}
