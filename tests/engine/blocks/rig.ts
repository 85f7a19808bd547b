import type { AnyBlock, AnySpecs, Field, TraceColumns } from '../../../engine/blocks/block';
import { isLink, isOption } from '../../../engine/blocks/block';
import { AIRSPEED_KNOTS, slotCount } from '../../../engine/blocks/curve';

/** Blocks on columns of their own, without a sheet, for tests that run them one after another: one sample, stride 1. */
export interface Rig {
  /** Runs a block with values typed into fields (SI, or the name of an option); gives its reason. */
  run(block: AnyBlock, typed?: Readonly<Record<string, number | string>>): string | undefined;
  /** A result of what was last run as this role. */
  get(path: string): number;
  /** Sets a result of a role that no block of the rig gives, such as the list of parts. */
  give(
    role: string,
    results: Readonly<Record<string, AnySpecs[string]>>,
    values: Readonly<Record<string, number>>,
  ): void;
  /** The values at all knots of a curve. */
  curve(path: string): number[];
  draw(block: AnyBlock): ReturnType<NonNullable<AnyBlock['draw']>>;
  trace(block: AnyBlock, name: string): TraceColumns | undefined;
}

export function newRig(): Rig {
  const m = new Float64Array(4000).fill(Number.NaN);
  let size = 0;
  const places = new Map<string, Record<string, number>>();
  const fieldsOf = new Map<AnyBlock, Record<string, unknown>>();
  const lay = (specs: Readonly<Record<string, AnySpecs[string]>>): Record<string, number> => {
    const columns: Record<string, number> = {};
    for (const [name, spec] of Object.entries(specs)) {
      if (isLink(spec)) continue;
      columns[name] = size;
      size += slotCount(spec);
    }
    return columns;
  };
  const roleOf = (block: AnyBlock): string => block.role ?? block.kind;
  const columnsOf = (block: AnyBlock): Record<string, unknown> => {
    const known = fieldsOf.get(block);
    if (known) return known;
    const laid = lay(block.fields);
    fieldsOf.set(block, laid);
    return laid;
  };
  const resultsOf = (role: string, specs: Readonly<Record<string, AnySpecs[string]>>): Record<string, number> => {
    const known = places.get(role);
    if (known && Object.keys(specs).every((name) => name in known)) return known;
    const laid = lay(specs);
    places.set(role, laid);
    return laid;
  };
  const linked = (block: AnyBlock): Record<string, unknown> => {
    const columns: Record<string, unknown> = { ...columnsOf(block) };
    for (const [name, spec] of Object.entries(block.fields)) if (isLink(spec)) columns[name] = places.get(spec.link);
    return columns;
  };
  return {
    run(block, typed = {}) {
      const columns = columnsOf(block) as Record<string, number>;
      for (const name of Object.keys(typed)) if (!(name in columns)) throw new Error(`${block.kind} has no ${name}`);
      for (const [name, spec] of Object.entries(block.fields)) {
        if (isLink(spec)) continue;
        const text = typed[name];
        if (isOption(spec)) m[columns[name]!] = spec.option.indexOf((text as string | undefined) ?? spec.default);
        else m[columns[name]!] = (text as number | undefined) ?? (spec as Field).default;
      }
      const [from, to] = [linked(block), resultsOf(roleOf(block), block.results)];
      const reason = block.run(m, from, to, 0, 1, {});
      if (reason === undefined) block.after?.run(m, from, to, 0);
      return reason;
    },
    get(path) {
      const [role, name] = path.split('.') as [string, string];
      const column = places.get(role)?.[name];
      if (column === undefined) throw new Error(`nothing gives ${path}`);
      return m[column]!;
    },
    give(role, results, values) {
      const columns = resultsOf(role, results);
      for (const [name, column] of Object.entries(columns)) m[column] = values[name] ?? Number.NaN;
    },
    curve(path) {
      const [role, name] = path.split('.') as [string, string];
      const column = places.get(role)![name]!;
      return Array.from(m.subarray(column, column + AIRSPEED_KNOTS.length));
    },
    draw: (block) => block.draw!(m, linked(block), places.get(roleOf(block))!, {}),
    trace: (block, name) => block.traces![name]!.run(m, linked(block), places.get(roleOf(block))!),
  };
}
